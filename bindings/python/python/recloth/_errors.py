"""The exceptions of the package: one, and one for briefs."""

import math


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

    A library that passes an exception on by its class and its text alone (polars does) leaves only
    those; the attributes then say nothing.
    """

    def __init__(
        self, function, kind="", status=0, argument="", value=math.nan, min=math.nan, max=math.nan,
        at=None, text=None, index=None,
    ):
        if text is None:
            function, text = "", function
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
        super().__init__((f"{function}: {text}" if function else text) + where)

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


class BriefError(ReclothError):
    """Why a brief cannot be planned.

    Attributes
    ----------
    name : str             name of the brief
    line : int or None     line in the brief, from 1, where there is one
    wrong : str            what is wrong
    right : str            what would be right
    """

    def __init__(self, name, line, wrong, right, text):
        nan = math.nan
        super().__init__("plan", "Invalid", -23, "brief", nan, nan, nan, None, text)
        self.args = (text,)
        self.name = name
        self.line = line
        self.wrong = wrong
        self.right = right

    def __reduce__(self):
        return BriefError, (self.name, self.line, self.wrong, self.right, self.text)


ReclothError.__module__ = "recloth"
BriefError.__module__ = "recloth"
