"""What a told sentence means, before its gaps are filled: one record for each kind, a file for each subject.

Kinds are named once: in the table ``TAKEN`` of the room that takes them in.
"""

from __future__ import annotations

from typing import Any

Claim = tuple[Any, ...]  # one of the records of these files
