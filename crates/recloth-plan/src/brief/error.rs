//! What is wrong with a brief: where, what, and what would be right.

use std::fmt;

/// Why a brief cannot be planned.
///
/// Printed as `FILE:LINE: what is wrong` and, on the next line, what would be right.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BriefError {
    file: String,
    line: Option<usize>,
    wrong: String,
    right: String,
}

impl BriefError {
    pub(crate) fn new(
        file: &str,
        line: Option<usize>,
        wrong: impl Into<String>,
        right: impl Into<String>,
    ) -> BriefError {
        BriefError {
            file: file.to_owned(),
            line,
            wrong: wrong.into(),
            right: right.into(),
        }
    }

    /// Name of the brief, as given to [`crate::plan()`].
    pub fn file(&self) -> &str {
        &self.file
    }

    /// Line in the brief, from 1, where there is one.
    pub fn line(&self) -> Option<usize> {
        self.line
    }

    /// What is wrong.
    pub fn wrong(&self) -> &str {
        &self.wrong
    }

    /// What would be right.
    pub fn right(&self) -> &str {
        &self.right
    }
}

impl fmt::Display for BriefError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.file)?;
        if let Some(line) = self.line {
            write!(f, ":{line}")?;
        }
        write!(f, ": {}", self.wrong)?;
        if !self.right.is_empty() {
            write!(f, "\n  {}", self.right)?;
        }
        Ok(())
    }
}

impl std::error::Error for BriefError {}
