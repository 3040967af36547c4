//! Errors in what was given: which part or panel, and what is wrong with it.

/// Why parts or panels were refused: whose value it is, in words, and the error itself.
///
/// ```
/// use recloth_lay::{Complaint, Lay, Part, check};
/// let pocket = Part::new("pocket", [(0.0, 0.0), (120.0, 0.0), (120.0, f64::NAN)]);
/// let Complaint::Input(error) = &check(&[pocket], &[], &Lay::default()).unwrap_err()[0] else { unreachable!() };
/// assert_eq!(error.to_string(), "part \"pocket\": outline[2] = NaN is not a finite number");
/// ```
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[error("{of}: {error}")]
pub struct Error {
    of: String,
    error: recloth::Error,
}

impl Error {
    pub(crate) fn new(of: impl Into<String>, error: recloth::Error) -> Error {
        Error {
            of: of.into(),
            error,
        }
    }

    /// Whose value it is: `part "pocket"`, `panel "left back"` or `options`.
    pub fn of(&self) -> &str {
        &self.of
    }

    /// What is wrong: the kind, the field, the value, what would do, and the index in a list.
    pub fn error(&self) -> recloth::Error {
        self.error
    }
}
