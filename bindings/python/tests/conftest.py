import sys
from pathlib import Path

# The reader of check values that the doors share.
sys.path.insert(0, str(Path(__file__).resolve().parents[3] / "tests/doors"))
