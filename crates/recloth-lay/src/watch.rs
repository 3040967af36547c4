//! When a search is to stop, and how far it has come.

use core::ops::ControlFlow;
use std::time::Instant;

/// How far a search has come.
#[derive(Clone, Copy, Debug, PartialEq)]
#[non_exhaustive]
pub struct Progress {
    /// Share of the budget or the time that is used up (0 to 1).
    pub done: f64,
    /// The best so far: of a strip its least length (mm), of a lay the share of the wanted area that is laid (0 to 1);
    /// `None` before there is one.
    pub best: Option<f64>,
}

/// What may be asked to go on or to stop.
pub(crate) type Listener<'a> = dyn FnMut(Progress) -> ControlFlow<()> + 'a;

/// Evaluations between two looks at the clock: some milliseconds. No source; it did well in trials.
const GLANCE: u64 = 200_000;

/// Stops a search by its work, by the time, or because someone says so.
pub(crate) struct Watch<'a> {
    start: Instant,
    seconds: Option<f64>,
    budget: u64,
    listener: &'a mut Listener<'a>,
    next: u64,
    /// Work, and share of the time, after which what is running is to stop.
    end: u64,
    until: f64,
    pub(crate) best: Option<f64>,
    pub(crate) out_of_time: bool,
    late: bool,
    stopped: bool,
}

impl<'a> Watch<'a> {
    pub(crate) fn new(budget: u64, seconds: Option<f64>, listener: &'a mut Listener<'a>) -> Self {
        Watch {
            start: Instant::now(),
            seconds,
            budget,
            listener,
            next: 0,
            end: budget,
            until: 1.0,
            best: None,
            out_of_time: false,
            late: false,
            stopped: false,
        }
    }

    /// Gives what runs next a share of the work and the time that are left.
    pub(crate) fn give(&mut self, work: u64, share: f64) {
        let part = |left: u64| (left as f64 * share) as u64;
        self.end = work.saturating_add(part(self.budget.saturating_sub(work)));
        let by_time = self.by_time();
        self.until = by_time + (1.0 - by_time) * share;
        self.late = false;
    }

    /// Work that what is running may still do.
    pub(crate) fn left(&self, work: u64) -> u64 {
        self.end.saturating_sub(work)
    }

    /// What share of it is done (0 to 1).
    pub(crate) fn done(&self, work: u64) -> f64 {
        (work as f64 / self.budget.max(1) as f64)
            .max(self.by_time())
            .min(1.0)
    }

    /// Whether to stop, after so much work.
    pub(crate) fn is_over(&mut self, work: u64) -> bool {
        if work >= self.next && !self.stopped {
            self.next = work + GLANCE;
            let by_time = self.by_time();
            self.out_of_time = by_time >= 1.0;
            self.late = by_time >= self.until;
            let progress = Progress {
                done: self.done(work),
                best: self.best,
            };
            let said = (self.listener)(progress);
            self.stopped = self.out_of_time || said.is_break();
        }
        self.stopped || self.late || work >= self.end
    }

    fn by_time(&self) -> f64 {
        self.seconds.map_or(0.0, |seconds| {
            self.start.elapsed().as_secs_f64() / seconds.max(1e-9)
        })
    }
}
