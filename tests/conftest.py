"""What holds for every test run, set before anything imports sympy."""

import os

# sympy picks its integers when it is first imported. The keys are proved on its own ("python") numbers, so that python-flint, with
# which the tests recompute them, stays an independent library. Subprocesses inherit it.
os.environ["SYMPY_GROUND_TYPES"] = "python"

from hypothesis import HealthCheck, settings

# Derandomized: the same random tables in every run, so that a red run can be repeated and a green one says the same as yesterday's.
settings.register_profile("fixed", derandomize=True, deadline=None, database=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("fixed")
