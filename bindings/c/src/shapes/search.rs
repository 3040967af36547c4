//! What every search goes through: JSON in, the caller told while it works, JSON out.

use core::{
    ffi::{c_char, c_int, c_void},
    ops::ControlFlow,
};

use recloth::{Error, ErrorKind};
use recloth_lay::Progress;
use serde::{Serialize, de::DeserializeOwned};

use super::handle::{read_json, say, write_json};
use crate::{
    boundary::{boundary, not_null, recloth_error_t},
    generated::recloth_status,
};

/// What a search calls while it works, many times a second, from the thread that called it: `done` is the share
/// of the budget or the time that is used up (0 to 1), `best` the best so far, NaN before there is one: of recloth_fit()
/// the share of the wanted area that is laid (0 to 1), of recloth_strip() the least length (mm), of others always NaN;
/// `user` is what was given along. It returns 0 to go on; anything else stops the search.
pub type recloth_progress =
    Option<unsafe extern "C" fn(done: f64, best: f64, user: *mut c_void) -> c_int>;

/// What a search hears from its caller.
pub(super) type Listener<'a> = dyn FnMut(Progress) -> ControlFlow<()> + 'a;

/// Why a search gave no answer: something given cannot be used, which names itself, or an error with a sentence for `message`.
pub(super) enum Stopped {
    Lay(recloth_lay::Error),
    Own(Error, String),
}

impl Stopped {
    /// An error that needs no more words.
    pub(super) fn own(kind: ErrorKind, argument: &'static str, value: f64) -> Stopped {
        Stopped::Own(
            Error::new(kind, argument, value, f64::NAN, f64::NAN),
            String::new(),
        )
    }
}

impl From<recloth_lay::Error> for Stopped {
    fn from(error: recloth_lay::Error) -> Stopped {
        Stopped::Lay(error)
    }
}

/// Where a search reads and answers; every such function has these arguments.
pub(super) struct Call {
    pub(super) json: *const c_char,
    pub(super) progress: recloth_progress,
    pub(super) user: *mut c_void,
    pub(super) out: *mut *mut c_char,
    pub(super) message: *mut *mut c_char,
    pub(super) error: *mut recloth_error_t,
}

impl Call {
    /// Reads the job, looks, and hands the answer out; what is wrong goes into `message` too.
    ///
    /// # Safety
    /// `json` is NULL or closed by a NUL; `progress` is NULL or a function that takes `user`; `out`, `message` and
    /// `error` are NULL or valid for writing.
    pub(super) unsafe fn answer<Job: DeserializeOwned, Answer: Serialize>(
        self,
        find: impl FnOnce(Job, &mut Listener<'_>) -> Result<Answer, Stopped>,
    ) -> recloth_status {
        // SAFETY: the caller's promise.
        unsafe {
            boundary(self.error, || {
                let job: Job = read_json(self.json, self.message)?;
                not_null("out", self.out)?;
                let mut listener = |so_far: Progress| {
                    let best = so_far.best.unwrap_or(f64::NAN);
                    match self.progress.map(|tell| tell(so_far.done, best, self.user)) {
                        None | Some(0) => ControlFlow::Continue(()),
                        Some(_) => ControlFlow::Break(()),
                    }
                };
                let found = find(job, &mut listener).map_err(|stopped| match stopped {
                    Stopped::Lay(error) => told(&error, self.message),
                    Stopped::Own(error, words) => {
                        if !words.is_empty() {
                            say(&words, self.message);
                        }
                        error
                    }
                })?;
                write_json(&found, self.out)
            })
        }
    }
}

/// What is wrong with a part, a panel or an option; the sentence goes into `message`.
///
/// # Safety
/// `message` is NULL or valid for writing.
pub(super) unsafe fn told(error: &recloth_lay::Error, message: *mut *mut c_char) -> Error {
    // SAFETY: the caller's promise.
    unsafe { say(&error.to_string(), message) };
    error.error()
}
