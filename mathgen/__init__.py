"""Turns a class's own results table into proved mathematics problems on paper.

sympy picks its integers when it is first imported. The keys are proved on sympy's own ("python") numbers, so that the
tests can hold them against python-flint, an independent library; with flint installed sympy would otherwise run on flint.
"""

import os

os.environ.setdefault("SYMPY_GROUND_TYPES", "python")

__version__ = "0.1.0"
