"""The one exception of the package."""


class ReclothError(ValueError):
    """Why a function gave no answer.

    Attributes
    ----------
    function : str         the function called
    kind : str             the kind of error, as ``"OutOfRange"``
    status : int           its number, the same in every language
    argument : str         the argument to change
    value : float          the value given
    min, max : float       what would do, NaN where there is no such bound
    at : int or None       index in a list, or character in a text, from 0
    index : tuple or None  place of the first bad element in an array of inputs
    """

    def __init__(self, function, kind, status, argument, value, min, max, at, text, index=None):
        self.function = function
        self.kind = kind
        self.status = status
        self.argument = argument
        self.value = value
        self.min = min
        self.max = max
        self.at = at
        self.text = text
        self.index = index
        where = "" if index is None else f" (element {', '.join(map(str, index))})"
        super().__init__(f"{function}: {text}{where}")

    def at_index(self, index):
        """The same error, found at this place of an array."""
        return ReclothError(*self._parts()[:-1], index)

    def _parts(self):
        return (
            self.function,
            self.kind,
            self.status,
            self.argument,
            self.value,
            self.min,
            self.max,
            self.at,
            self.text,
            self.index,
        )

    def __reduce__(self):
        return ReclothError, self._parts()


ReclothError.__module__ = "recloth"
