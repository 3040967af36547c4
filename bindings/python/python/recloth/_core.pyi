from typing import Any

# The compiled half of the package: what it holds is described where it is given a name.
def __getattr__(name: str) -> Any: ...
