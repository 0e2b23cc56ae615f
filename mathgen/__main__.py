"""``python -m mathgen``."""

from mathgen.cli import main

if __name__ == "__main__":
    main(prog_name="mathgen")
