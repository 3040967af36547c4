//! Reads tables of TOML key by key, so that every slip is told with its line and what would be right.

use std::cell::RefCell;
use std::ops::Range;

use recloth::tape::parse_length;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::BriefError;
use crate::nearest::nearest;

/// The brief's text and name, for lines and messages.
#[derive(Clone, Copy)]
pub(crate) struct Source<'a> {
    pub(crate) file: &'a str,
    pub(crate) text: &'a str,
}

impl<'a> Source<'a> {
    /// The line of a byte of the text, from 1.
    fn line(&self, byte: usize) -> usize {
        self.text
            .bytes()
            .take(byte)
            .filter(|&byte| byte == b'\n')
            .count()
            + 1
    }

    pub(crate) fn error(
        &self,
        span: &Range<usize>,
        wrong: impl Into<String>,
        right: impl Into<String>,
    ) -> BriefError {
        BriefError::new(self.file, Some(self.line(span.start)), wrong, right)
    }

    /// Parses the text as TOML.
    pub(crate) fn parse(&self) -> Result<Spanned<DeTable<'a>>, BriefError> {
        DeTable::parse(self.text).map_err(|error| {
            let line = error.span().map(|span| self.line(span.start));
            let is_path = self.text.lines().count() == 1 && self.text.trim_end().ends_with(".toml");
            BriefError::new(
                self.file,
                line,
                format!("this is not TOML: {}", error.message().trim().replace('\n', "; ")),
                if is_path {
                    "Give the text of the brief, not the path of its file."
                } else {
                    "A brief is lines of KEY = \"value\" under [headings]; a text stands in \"quotes\", with \\\" for \
                     a quote within it."
                },
            )
        })
    }
}

/// A value with its place in the brief.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct At<T> {
    pub(crate) value: T,
    pub(crate) span: Range<usize>,
}

/// Every key that some table of a brief has, in order: none of them is a slip of another.
const KEYS: &[&str] = &[
    "across",
    "across_back",
    "after",
    "allowances",
    "along",
    "armhole_depth",
    "at",
    "back_darts",
    "back_length",
    "band_depth",
    "band_overlap",
    "band_sections",
    "band_taper",
    "baths",
    "below_waist",
    "bib_height",
    "bib_width",
    "bought_width",
    "bust",
    "button_across",
    "button_thick",
    "buttons",
    "clear",
    "cloth",
    "cloths",
    "corner_radius",
    "corners",
    "count",
    "cut_folded",
    "dart_length",
    "dry_weight",
    "ease",
    "facing",
    "fibre",
    "fibre_is",
    "flare",
    "flaws",
    "for",
    "front_darts",
    "fullness",
    "garment",
    "grain",
    "grain_deg",
    "height",
    "hem",
    "high",
    "hip",
    "hip_depth",
    "hip_ease",
    "join_from",
    "join_to",
    "kind",
    "largest_dart",
    "length",
    "lining",
    "litres_per_kg",
    "loss",
    "losses",
    "make",
    "match_notches",
    "may_give",
    "name",
    "neck",
    "neck_depth",
    "note",
    "of",
    "on",
    "one_way",
    "outline",
    "overlap",
    "panels",
    "parts",
    "people",
    "percent_of_weight",
    "piece",
    "pot_litres",
    "print_in",
    "readings",
    "repeat_across",
    "repeat_along",
    "right_side",
    "ruffle_depth",
    "ruffle_fullness",
    "ruffle_pieces",
    "seam",
    "shorter_at",
    "shorter_by",
    "shoulder",
    "shrinks_across_pct",
    "shrinks_along_pct",
    "skirt_length",
    "skirt_panels",
    "stays_on",
    "steps",
    "strap_length",
    "strap_width",
    "tilt_deg",
    "tilt_to_deg",
    "title",
    "under",
    "waist",
    "waist_ease",
    "what",
    "wide",
    "width",
    "with",
];

/// The longest text that is read, in letters: a name or a title is a twentieth of this.
const LONGEST: usize = 1000;

/// A name for a message: whole, unless it is absurdly long.
fn start(name: &str) -> String {
    match name.char_indices().nth(60) {
        Some((end, _)) => format!("{}…", &name[..end]),
        None => name.to_owned(),
    }
}

/// One table of the brief; remembers which keys were asked for.
pub(crate) struct Table<'a> {
    source: Source<'a>,
    table: &'a DeTable<'a>,
    /// Where it stands and what it is called in messages.
    pub(crate) span: Range<usize>,
    pub(crate) what: String,
    asked: RefCell<Vec<&'static str>>,
}

type Read<T> = Result<T, BriefError>;

impl<'a> Table<'a> {
    pub(crate) fn new(
        source: Source<'a>,
        table: &'a DeTable<'a>,
        span: Range<usize>,
        what: impl Into<String>,
    ) -> Table<'a> {
        Table {
            source,
            table,
            span,
            what: what.into(),
            asked: RefCell::new(Vec::new()),
        }
    }

    /// An error at this place of the brief.
    pub(crate) fn error(
        &self,
        span: &Range<usize>,
        wrong: impl Into<String>,
        right: impl Into<String>,
    ) -> BriefError {
        self.source.error(span, wrong, right)
    }

    fn get(&self, key: &'static str) -> Option<&'a Spanned<DeValue<'a>>> {
        debug_assert!(KEYS.contains(&key), "{key} is missing from KEYS");
        self.asked.borrow_mut().push(key);
        self.table.get(key)
    }

    /// Is the key there?
    pub(crate) fn has(&self, key: &'static str) -> bool {
        self.get(key).is_some()
    }

    /// Where the key's value stands, or the table where it is not there.
    pub(crate) fn place(&self, key: &'static str) -> Range<usize> {
        self.get(key).map_or(self.span.clone(), Spanned::span)
    }

    fn missing(&self, key: &'static str, right: String) -> BriefError {
        let strange =
            |found: &&Spanned<std::borrow::Cow<'_, str>>| !KEYS.contains(&found.get_ref().as_ref());
        let names = self.table.keys().filter(strange);
        let slip = nearest(key, names.map(|found| found.get_ref().as_ref()))
            .and_then(|name| self.table.keys().find(|found| found.get_ref() == name));
        match slip {
            Some(slip) => self.unknown_key(slip, Some(key)),
            None => self.error(&self.span, format!("{} has no \"{key}\"", self.what), right),
        }
    }

    fn unknown_key(
        &self,
        key: &Spanned<std::borrow::Cow<'_, str>>,
        meant: Option<&str>,
    ) -> BriefError {
        let right = match meant {
            Some(meant) => format!("Is \"{meant}\" meant?"),
            None => {
                let mut known = self.asked.borrow().clone();
                known.sort_unstable();
                known.dedup();
                format!("It may have: {}.", known.join(", "))
            }
        };
        let wrong = format!("{} has an unknown key \"{}\"", self.what, key.get_ref());
        self.error(&key.span(), wrong, right)
    }

    /// An error when the table has a key that nobody asked for.
    pub(crate) fn done(&self) -> Read<()> {
        let asked = self.asked.borrow().clone();
        // Keys lie in order of the alphabet; the first slip in the text is told.
        let slip = self
            .table
            .keys()
            .filter(|key| !asked.contains(&key.get_ref().as_ref()))
            .min_by_key(|key| key.span().start);
        match slip {
            None => Ok(()),
            Some(key) => Err(self.unknown_key(key, nearest(key.get_ref(), asked.iter().copied()))),
        }
    }

    fn wrong_type(
        &self,
        key: &str,
        value: &Spanned<DeValue<'_>>,
        wanted: &str,
        right: &str,
    ) -> BriefError {
        let found = match value.get_ref() {
            DeValue::String(_) => "a text",
            DeValue::Integer(_) | DeValue::Float(_) => "a bare number",
            DeValue::Boolean(_) => "true or false",
            DeValue::Datetime(_) => "a date",
            DeValue::Array(_) => "a list",
            DeValue::Table(_) => "a table",
        };
        self.error(
            &value.span(),
            format!("\"{key}\" is {found}, not {wanted}"),
            right,
        )
    }

    /// An error when a text is so long that no drawing or page could show it.
    fn not_too_long(&self, key: &str, text: &str, span: &Range<usize>) -> Read<()> {
        let letters = text.chars().count();
        if letters > LONGEST {
            return Err(self.error(
                span,
                format!("\"{key}\" of {} is {letters} letters long", self.what),
                format!(
                    "Give at most {LONGEST} letters: it is printed on the worksheet or the pieces."
                ),
            ));
        }
        Ok(())
    }

    pub(crate) fn opt_text(&self, key: &'static str) -> Read<Option<At<String>>> {
        let Some(value) = self.get(key) else {
            return Ok(None);
        };
        match value.get_ref() {
            DeValue::String(text) => {
                self.not_too_long(key, text, &value.span())?;
                Ok(Some(At {
                    value: text.to_string(),
                    span: value.span(),
                }))
            }
            _ => Err(self.wrong_type(key, value, "a text", &format!("{key} = \"...\""))),
        }
    }

    pub(crate) fn text(&self, key: &'static str) -> Read<At<String>> {
        match self.opt_text(key)? {
            Some(text) if text.value.trim().is_empty() => Err(self.error(
                &text.span,
                format!("\"{key}\" of {} is empty", self.what),
                format!("{key} = \"...\""),
            )),
            Some(text) => Ok(text),
            None => Err(self.missing(key, format!("Add {key} = \"...\"."))),
        }
    }

    fn read_length(
        &self,
        key: &str,
        value: &Spanned<DeValue<'_>>,
        range: (f64, f64),
    ) -> Read<At<f64>> {
        let right = format!("Write it with its unit: {key} = \"28 1/2 in\" or \"72,5 cm\".");
        let DeValue::String(text) = value.get_ref() else {
            return Err(self.wrong_type(key, value, "a length", &right));
        };
        let value_span = value.span();
        let length = self.length_in(key, text, &value_span, range)?;
        Ok(At {
            value: length,
            span: value_span,
        })
    }

    /// Reads the text of a length and sees that it is within the range.
    fn length_in(
        &self,
        key: &str,
        text: &str,
        span: &Range<usize>,
        range: (f64, f64),
    ) -> Read<f64> {
        let length = parse_length(text).map_err(|error| {
            self.error(
                span,
                format!(
                    "\"{key}\" of {} cannot be read as a length: \"{text}\": {error}",
                    self.what
                ),
                "Write it with its unit: \"28 1/2 in\" or \"72,5 cm\".",
            )
        })?;
        if length < range.0 || length > range.1 {
            let wrong = format!(
                "\"{key}\" of {} cannot be {text}: that is {}",
                self.what,
                crate::measure::both(length)
            );
            let right = format!(
                "It must be between {} and {}.",
                crate::measure::both(range.0),
                crate::measure::both(range.1)
            );
            return Err(self.error(span, wrong, right));
        }
        Ok(length)
    }

    /// A length within the range (mm), where the key is there.
    pub(crate) fn opt_length(&self, key: &'static str, range: (f64, f64)) -> Read<Option<f64>> {
        match self.get(key) {
            None => Ok(None),
            Some(value) => Ok(Some(self.read_length(key, value, range)?.value)),
        }
    }

    /// A length within the range (mm).
    pub(crate) fn length(&self, key: &'static str, range: (f64, f64)) -> Read<f64> {
        match self.opt_length(key, range)? {
            Some(length) => Ok(length),
            None => Err(self.missing(key, format!("Add {key} = \"...\", a length with its unit."))),
        }
    }

    /// A list of pairs of lengths, as points are given.
    pub(crate) fn opt_points(
        &self,
        key: &'static str,
        range: (f64, f64),
    ) -> Read<Option<Vec<(f64, f64)>>> {
        let Some(value) = self.get(key) else {
            return Ok(None);
        };
        let right = format!("{key} = [[\"0 in\", \"0 in\"], [\"9 in\", \"0 in\"], ...]");
        let DeValue::Array(items) = value.get_ref() else {
            return Err(self.wrong_type(key, value, "a list of points", &right));
        };
        let points = items
            .iter()
            .map(|item| self.read_point(key, item, range, &right));
        points.collect::<Read<Vec<_>>>().map(Some)
    }

    fn read_point(
        &self,
        key: &str,
        value: &Spanned<DeValue<'_>>,
        range: (f64, f64),
        right: &str,
    ) -> Read<(f64, f64)> {
        match value.get_ref().as_array() {
            Some(pair) if pair.len() == 2 => Ok((
                self.read_length(key, &pair[0], range)?.value,
                self.read_length(key, &pair[1], range)?.value,
            )),
            _ => Err(self.wrong_type(key, value, "a pair of lengths", right)),
        }
    }

    /// One pair of lengths: how far along, how far up.
    pub(crate) fn point(&self, key: &'static str, range: (f64, f64)) -> Read<(f64, f64)> {
        let right = format!("{key} = [\"3 in\", \"10 in\"]: along, then up.");
        match self.get(key) {
            Some(value) => self.read_point(key, value, range, &right),
            None => Err(self.missing(key, right)),
        }
    }

    /// A number within the range.
    pub(crate) fn opt_number(&self, key: &'static str, range: (f64, f64)) -> Read<Option<f64>> {
        let Some(value) = self.get(key) else {
            return Ok(None);
        };
        let right = format!("{key} = a number between {} and {}.", range.0, range.1);
        let number = match value.get_ref() {
            DeValue::Integer(digits) => {
                i64::from_str_radix(&digits.as_str().replace('_', ""), digits.radix())
                    .ok()
                    .map(|whole| whole as f64)
            }
            DeValue::Float(digits) => digits.as_str().replace('_', "").parse::<f64>().ok(),
            _ => return Err(self.wrong_type(key, value, "a number", &right)),
        };
        match number {
            Some(number) if number >= range.0 && number <= range.1 => Ok(Some(number)),
            _ => Err(self.error(&value.span(), format!("\"{key}\" is out of range"), right)),
        }
    }

    /// A number within the range.
    pub(crate) fn number(&self, key: &'static str, range: (f64, f64)) -> Read<f64> {
        match self.opt_number(key, range)? {
            Some(number) => Ok(number),
            None => Err(self.missing(
                key,
                format!("Add {key} = a number between {} and {}.", range.0, range.1),
            )),
        }
    }

    /// A whole number within the range, `default` where the key is not there.
    pub(crate) fn count(&self, key: &'static str, range: (u32, u32), default: u32) -> Read<u32> {
        match self.opt_number(key, (f64::from(range.0), f64::from(range.1)))? {
            None => Ok(default),
            Some(number) if number.fract() == 0.0 => Ok(number as u32),
            Some(number) => Err(self.error(
                &self.place(key),
                format!("\"{key}\" is {number}, not a whole number"),
                format!(
                    "{key} = a whole number between {} and {}.",
                    range.0, range.1
                ),
            )),
        }
    }

    /// True or false, `default` where the key is not there.
    pub(crate) fn flag(&self, key: &'static str, default: bool) -> Read<bool> {
        match self.get(key) {
            None => Ok(default),
            Some(value) => match value.get_ref() {
                DeValue::Boolean(flag) => Ok(*flag),
                _ => Err(self.wrong_type(key, value, "true or false", &format!("{key} = true"))),
            },
        }
    }

    /// One of the names offered, where the key is there.
    pub(crate) fn opt_choice<T: Copy>(
        &self,
        key: &'static str,
        choices: &[(&'static str, T)],
    ) -> Read<Option<T>> {
        let Some(text) = self.opt_text(key)? else {
            return Ok(None);
        };
        match choices.iter().find(|(name, _)| *name == text.value) {
            Some((_, choice)) => Ok(Some(*choice)),
            None => Err(self.not_offered(key, &text, choices.iter().map(|(name, _)| *name))),
        }
    }

    /// One of the names offered.
    pub(crate) fn choice<T: Copy>(
        &self,
        key: &'static str,
        choices: &[(&'static str, T)],
    ) -> Read<T> {
        match self.opt_choice(key, choices)? {
            Some(choice) => Ok(choice),
            None => {
                let names: Vec<&str> = choices.iter().map(|(name, _)| *name).collect();
                Err(self.missing(key, format!("Add {key} = one of: {}.", names.join(", "))))
            }
        }
    }

    /// The error for a name that is not among those offered.
    pub(crate) fn not_offered<'n>(
        &self,
        key: &str,
        text: &At<String>,
        names: impl Iterator<Item = &'n str> + Clone,
    ) -> BriefError {
        let right = match nearest(&text.value, names.clone()) {
            Some(meant) => format!("Is \"{meant}\" meant?"),
            None => {
                let names: Vec<String> = names.map(|name| format!("\"{name}\"")).collect();
                format!("It may be: {}.", names.join(", "))
            }
        };
        self.error(
            &text.span,
            format!("\"{key}\" cannot be \"{}\"", text.value),
            right,
        )
    }

    /// A table under this key, where it is there.
    pub(crate) fn opt_table(&self, key: &'static str, what: &str) -> Read<Option<Table<'a>>> {
        let Some(value) = self.get(key) else {
            return Ok(None);
        };
        match value.get_ref() {
            DeValue::Table(table) => Ok(Some(Table::new(self.source, table, value.span(), what))),
            _ => Err(self.wrong_type(
                key,
                value,
                "a table",
                &format!("Write [{key}] and its keys below."),
            )),
        }
    }

    /// The named tables under this key: `[key.NAME]`.
    pub(crate) fn named_tables(
        &self,
        key: &'static str,
        what: &str,
    ) -> Read<Vec<(String, Table<'a>)>> {
        let Some(outer) = self.opt_table(key, what)? else {
            return Ok(Vec::new());
        };
        let mut tables = Vec::new();
        for (name, value) in outer.table.iter() {
            let DeValue::Table(table) = value.get_ref() else {
                let right = format!("Write [{key}.NAME] and its keys below.");
                return Err(self.wrong_type(name.get_ref(), value, "a table", &right));
            };
            let title = format!("{what} \"{}\"", start(name.get_ref()));
            self.not_too_long("NAME", name.get_ref(), &name.span())?;
            let span = name.span().start..value.span().end;
            tables.push((
                name.get_ref().to_string(),
                Table::new(self.source, table, span, title),
            ));
        }
        Ok(tables)
    }

    /// The tables of a list under this key: `[[key]]`.
    pub(crate) fn tables(&self, key: &'static str, what: &str) -> Read<Vec<Table<'a>>> {
        let Some(value) = self.get(key) else {
            return Ok(Vec::new());
        };
        let right = format!("Write [[{key}]] and its keys below, once for each.");
        let DeValue::Array(items) = value.get_ref() else {
            return Err(self.wrong_type(key, value, "a list of tables", &right));
        };
        let mut tables = Vec::new();
        for item in items.iter() {
            let DeValue::Table(table) = item.get_ref() else {
                return Err(self.wrong_type(key, item, "a table", &right));
            };
            // A message names it by its own name where it has one.
            let name = ["name", "garment", "what"]
                .iter()
                .find_map(|key| match table.get(*key) {
                    Some(name) => name.get_ref().as_str(),
                    None => None,
                });
            let title = name.map_or(format!("the {what}"), |name| {
                format!("{what} \"{}\"", start(name))
            });
            tables.push(Table::new(self.source, table, item.span(), title));
        }
        Ok(tables)
    }

    /// A list of texts.
    pub(crate) fn texts(&self, key: &'static str) -> Read<Vec<At<String>>> {
        let Some(value) = self.get(key) else {
            return Ok(Vec::new());
        };
        let right = format!("{key} = [\"...\", \"...\"]");
        let DeValue::Array(items) = value.get_ref() else {
            return Err(self.wrong_type(key, value, "a list of texts", &right));
        };
        items
            .iter()
            .map(|item| match item.get_ref() {
                DeValue::String(text) => Ok(At {
                    value: text.to_string(),
                    span: item.span(),
                }),
                _ => Err(self.wrong_type(key, item, "a text", &right)),
            })
            .collect()
    }

    /// A list of lengths, each after the two letters it belongs to: `"AB 22 1/2 in"`.
    pub(crate) fn lettered(
        &self,
        key: &'static str,
        range: (f64, f64),
    ) -> Read<Vec<(At<String>, f64)>> {
        let mut lengths = Vec::new();
        for text in self.texts(key)? {
            let trimmed = text.value.trim();
            let (letters, length) = trimmed
                .split_once(char::is_whitespace)
                .unwrap_or((trimmed, ""));
            if letters.chars().any(|c| !c.is_alphabetic()) || length.trim().is_empty() {
                return Err(self.error(
                    &text.span,
                    format!(
                        "\"{key}\" of {} cannot be \"{}\"",
                        self.what,
                        start(trimmed)
                    ),
                    "Write the letters of two corners, a space, and the length: \"AB 22 1/2 in\".",
                ));
            }
            let length = self.length_in(key, length.trim(), &text.span, range)?;
            lengths.push((
                At {
                    value: letters.to_owned(),
                    span: text.span,
                },
                length,
            ));
        }
        Ok(lengths)
    }
}
