//! One fit after another, out of one budget and one time.

use std::time::Instant;

use crate::fit::fit_until;
use crate::watch::Listener;
use crate::{Error, Fit, Options, Panel, Part, Progress};

/// Trials that share a budget and a time.
pub(crate) struct Trials<'a> {
    panels: &'a [Panel],
    options: &'a Options,
    listener: &'a mut Listener<'a>,
    start: Instant,
    /// Evaluations that are left; none once the listener has said stop.
    pub(crate) left: u64,
    used: u64,
    /// Share that was told last, which does not go back where a trial ends early.
    told: f64,
    stopped: bool,
    out_of_time: bool,
}

impl<'a> Trials<'a> {
    pub(crate) fn new(
        panels: &'a [Panel],
        options: &'a Options,
        listener: &'a mut Listener<'a>,
    ) -> Trials<'a> {
        Trials {
            panels,
            options,
            listener,
            start: Instant::now(),
            left: options.budget,
            used: 0,
            told: 0.0,
            stopped: false,
            out_of_time: false,
        }
    }

    /// Evaluations made, of those there were.
    pub(crate) fn used(&self) -> u64 {
        self.used.min(self.options.budget)
    }

    /// Whether the time was up before all was tried.
    pub(crate) fn out_of_time(&self) -> bool {
        self.out_of_time
    }

    /// Whether nothing more is to be tried: the time is up, or the listener has said stop.
    pub(crate) fn is_over(&mut self) -> bool {
        let spent = self.start.elapsed().as_secs_f64();
        self.out_of_time |= self.options.seconds.is_some_and(|seconds| spent >= seconds);
        if self.out_of_time {
            self.left = 0;
        }
        self.stopped || self.out_of_time
    }

    /// How some parts fit, by so many evaluations at most; where a proof says that they do not, nothing is looked for.
    pub(crate) fn fit(&mut self, parts: &[Part], budget: u64) -> Result<Fit, Error> {
        let spent = self.start.elapsed().as_secs_f64();
        let options = Options {
            budget,
            seconds: (self.options.seconds).map(|seconds| (seconds - spent).max(0.0)),
            ..*self.options
        };
        // Shares of the whole, for one trial uses up a part of it.
        let all = self.options.budget.max(1) as f64;
        let (begin, part) = (self.used as f64 / all, budget as f64 / all);
        let (listener, told, stopped) = (&mut *self.listener, &mut self.told, &mut self.stopped);
        let mut heard = |within: Progress| {
            *told = told.max((begin + part * within.done).min(1.0));
            let said = listener(Progress {
                done: *told,
                best: None,
            });
            *stopped |= said.is_break();
            said
        };
        let found = fit_until(parts, self.panels, &options, true, &mut heard)?;
        self.used += found.evaluations;
        self.out_of_time |= found.out_of_time && !self.stopped;
        self.left = match self.stopped {
            true => 0,
            false => self.left.saturating_sub(found.evaluations),
        };
        Ok(found)
    }
}
