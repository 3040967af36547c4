//! `recloth sum NAME argument=value …`: any function of the library from the terminal.
//!
//! Everything it says comes from the one description of every function, by [`recloth_table`].

mod answer;
mod help;
mod json;
mod quantity;
mod read;
mod wording;
mod words;

use recloth_table::{FUNCTIONS, Function, MODULES, SHAPES, find};

use crate::nearest::nearest;
use words::{Line, Pair};

/// What the command says, and how it ends.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Told {
    /// For the standard output.
    pub out: String,
    /// For the standard error.
    pub err: String,
    /// Exit status: 0 there is an answer, 2 there is none.
    pub code: u8,
}

impl Told {
    fn good(out: String) -> Told {
        Told {
            out,
            err: String::new(),
            code: 0,
        }
    }
}

/// What is wrong, and in further lines what would do.
#[derive(Debug)]
struct Wrong {
    function: Option<&'static str>,
    what: String,
    right: Vec<String>,
    core: Option<recloth::Error>,
}

impl Wrong {
    fn new(what: String) -> Wrong {
        Wrong {
            function: None,
            what,
            right: Vec::new(),
            core: None,
        }
    }

    fn with(mut self, right: String) -> Wrong {
        self.right.push(right);
        self
    }

    fn text(&self, width: usize) -> String {
        let name = self
            .function
            .map_or_else(String::new, |name| format!(" {name}"));
        let mut out = textwrap::fill(&format!("recloth sum{name}: {}", self.what), width);
        for right in &self.right {
            let options = textwrap::Options::new(width)
                .initial_indent("  ")
                .subsequent_indent("    ");
            out.push('\n');
            out.push_str(&textwrap::fill(right, options));
        }
        if let Some(name) = self.function {
            out.push_str(&format!("\n  recloth sum {name} --help explains it."));
        }
        out.push('\n');
        out
    }
}

/// Answers the words behind `recloth sum`, in lines of up to `width` columns where they can be so short.
///
/// ```
/// let words = ["circle_skirt", "waist=28", "1/2in", "length=60cm", "fraction=0.5"].map(str::to_owned);
/// let told = recloth_plan::sum::sum(&words, 100);
/// assert_eq!(told.code, 0);
/// assert!(told.out.contains("9 1/8 in"), "{}", told.out);
/// ```
pub fn sum(words: &[String], width: usize) -> Told {
    let line = Line::read(words);
    let json = line.options.iter().any(|option| option == "--json");
    answer(&line, json, width).unwrap_or_else(|wrong| Told {
        out: if json {
            json::error(&wrong)
        } else {
            String::new()
        },
        err: if json {
            String::new()
        } else {
            wrong.text(width)
        },
        code: 2,
    })
}

/// `recloth sum --help`: how values are written.
fn help() -> String {
    format!(
        "Any function of the library, answered from the terminal\n\n\
         recloth sum                             lists every function\n\
         recloth sum NAME --help                 explains one\n\
         recloth sum NAME argument=value ...     answers it, with --json as one line of JSON\n\n{}",
        help::WRITING
    )
}

fn answer(line: &Line, json: bool, width: usize) -> Result<Told, Wrong> {
    const OPTIONS: [&str; 3] = ["--json", "--help", "-h"];
    if let Some(unknown) = line
        .options
        .iter()
        .find(|option| !OPTIONS.contains(&option.as_str()))
    {
        let name = unknown.trim_start_matches('-');
        return Err(Wrong::new(format!("{unknown} is no option")).with(format!(
            "The options are --json and --help; an argument is written {name}=value."
        )));
    }
    let is_help = |word: &&String| ["--help", "-h", "help"].contains(&word.as_str());
    let wants_help = line
        .options
        .iter()
        .chain(&line.head)
        .any(|word| is_help(&word));
    let head: Vec<String> = line
        .head
        .iter()
        .filter(|word| !is_help(word))
        .cloned()
        .collect();
    if head.is_empty() && line.pairs.is_empty() {
        return Ok(Told::good(if wants_help {
            help()
        } else {
            help::list(None, width)
        }));
    }
    let alone = line.pairs.is_empty();
    let (function, bare) = match named(&head) {
        Ok(named) => named,
        // The name of a file, and of no function: what is in it.
        Err(wrong) => {
            let module = MODULES.iter().find(|module| alone && head == [module.name]);
            return module.map_or(Err(wrong), |module| {
                Ok(Told::good(help::list(Some(module), width)))
            });
        }
    };
    let in_function = |mut wrong: Wrong| {
        wrong.function = Some(function.name);
        wrong
    };
    if wants_help {
        let ran = run_example(function, width);
        return Ok(Told::good(help::page(function, &ran, width)));
    }
    let pairs: Vec<Pair> = bare.into_iter().chain(line.pairs.iter().cloned()).collect();
    let read = read::read(function, &pairs).map_err(|wrong| {
        in_function(if pairs.is_empty() {
            wrong.with(format!("For example: {}", help::example(function)))
        } else {
            wrong
        })
    })?;
    match function.call(&read.given) {
        Some(Ok(got)) if json => Ok(Told::good(json::answer(function, &read, &got))),
        Some(Ok(got)) => Ok(Told::good(answer::text(function, &read, &got, width))),
        Some(Err(error)) => {
            let mut wrong = in_function(answer::wrong(function, &read, &error));
            wrong.core = Some(error);
            Err(wrong)
        }
        // What was read has the kinds the table asks for; a bug, then, told as one.
        None => Err(in_function(Wrong::new(String::from(
            "these values cannot be passed; please report it",
        )))),
    }
}

/// What the example of a function prints.
fn run_example(function: &'static Function, width: usize) -> String {
    let pairs: Vec<Pair> = help::example_pairs(function);
    let read = read::read(function, &pairs);
    let narrow = width.saturating_sub(4);
    match read.map(|read| (function.call(&read.given), read)) {
        Ok((Some(Ok(got)), read)) => answer::text(function, &read, &got, narrow),
        Ok((Some(Err(error)), read)) => answer::wrong(function, &read, &error).text(narrow),
        Ok((None, _)) => String::new(),
        Err(wrong) => wrong.text(narrow),
    }
}

/// The function that the words before the arguments name, with or without its underscores.
///
/// Words behind the name are the value of the one argument that must be given, where there is but one.
fn named(head: &[String]) -> Result<(&'static Function, Option<Pair>), Wrong> {
    let whole = words::tidy_name(&head.join("_"));
    if let Some(function) = find(&whole) {
        return Ok((function, None));
    }
    let Some(first) = head.first() else {
        return Err(Wrong::new("which function?".into())
            .with("The name of a function comes first; recloth sum lists them all.".into()));
    };
    if let Some(function) = find(&words::tidy_name(first)) {
        let mut needed = function
            .arguments
            .iter()
            .filter(|argument| argument.default.is_none());
        if let (Some(only), None) = (needed.next(), needed.next()) {
            return Ok((function, Some((only.name.to_owned(), head[1..].join(" ")))));
        }
        let names: Vec<String> = function
            .arguments
            .iter()
            .map(|argument| format!("{}=...", argument.name))
            .collect();
        let mut wrong = Wrong::new(format!(
            "`{}` has no name: which argument is it?",
            head[1..].join(" ")
        ))
        .with(format!("Write {} {}", function.name, names.join(" ")));
        wrong.function = Some(function.name);
        return Err(wrong);
    }
    if let Some((name, summary)) = SHAPES.iter().find(|(name, _)| *name == whole) {
        return Err(Wrong::new(format!(
            "{name} works on outlines, which cannot be typed here"
        ))
        .with(format!(
            "{summary} Call it from Rust or Python, or lay a panel with recloth plan."
        )));
    }
    let names = || FUNCTIONS.iter().map(|function| function.name);
    let parts: Vec<&str> = names().filter(|name| name.contains(&whole)).collect();
    let meant = match (&parts[..], nearest(&whole, names())) {
        // A part of several names is more likely meant than a slip of one other.
        ([_, _, ..], _) if parts.len() <= 12 => {
            format!("; is one of these meant: {}?", parts.join(", "))
        }
        (&[meant], _) | (_, Some(meant)) => format!("; is {meant} meant?"),
        _ => String::new(),
    };
    Err(Wrong::new(format!("there is no function {whole}{meant}"))
        .with("recloth sum lists them all.".into()))
}
