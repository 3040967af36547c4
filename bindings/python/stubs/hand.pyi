from . import ufuncs as ufuncs

__version__: str
MM: float
CM: float
M: float
INCH: float
FOOT: float
YARD: float

class ReclothError(ValueError):
    function: str
    kind: str
    status: int
    argument: str
    value: float
    min: float
    max: float
    at: int | None
    text: str
    index: tuple[int, ...] | None
    def __init__(
        self,
        function: str,
        kind: str,
        status: int,
        argument: str,
        value: float,
        min: float,
        max: float,
        at: int | None,
        text: str,
        index: tuple[int, ...] | None = None,
    ) -> None: ...
    def at_index(self, index: tuple[int, ...]) -> ReclothError: ...
    def __reduce__(self) -> tuple[type[ReclothError], tuple[object, ...]]: ...

def doubt_text(bit: int) -> str | None: ...
def caution_text(bit: int) -> str | None: ...
def doubts(bits: int) -> list[str]: ...
def cautions(bits: int) -> list[str]: ...
