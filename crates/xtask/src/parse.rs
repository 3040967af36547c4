//! From the core's source to the spec: signatures give the types, doc comments the rest.

use std::{collections::BTreeSet, fs, path::Path};

use recloth::{ErrorKind, doubt};
use syn::{FnArg, Item, Pat, ReturnType, Type, Visibility, spanned::Spanned};

use crate::spec::{
    Answer, AnswerKind, Argument, Bit, Choice, Default, Field, Function, Items, Kind, Module,
    Shape, Spec, Status, Variant, snake,
};

/// What is wrong in the core's source, with file and line.
type Fault = String;

const UNITS: &[&str] = &[
    "mm", "mm2", "deg", "%", "g", "gsm", "ml", "tex", "min", "degC", "1", "count", "text",
    "choice", "bits",
];

/// Files of the core in the order in which a garment is remade: reading the tape, panels and body, pieces, making up,
/// cloth, baths, colour.
const ORDER: &[&str] = &[
    "tape",
    "chain",
    "panel",
    "offsets",
    "photo",
    "arc",
    "body",
    "ease",
    "alteration",
    "piecing",
    "dart",
    "skirt",
    "gore",
    "tier",
    "opening",
    "band",
    "neck",
    "sleeve",
    "lining",
    "closure",
    "fastening",
    "fullness",
    "pleat",
    "elastic",
    "bias",
    "binding",
    "seam",
    "thread",
    "needle",
    "cloth",
    "quantity",
    "nap",
    "stretch",
    "fibre",
    "wet",
    "bleach",
    "dye",
    "colour",
    "shade",
];

/// Reads the core below `root` into the one description.
pub(crate) fn read(root: &Path) -> Result<Spec, Fault> {
    let mut sources = Vec::new();
    collect(&root.join("crates/recloth/src"), "", &mut sources)?;
    let mut spec = Spec {
        version: recloth::VERSION.to_owned(),
        statuses: ErrorKind::ALL
            .iter()
            .map(|kind| Status {
                code: kind.code(),
                name: kind.name().to_owned(),
                text: kind.text().to_owned(),
            })
            .collect(),
        doubts: bits(doubt::DOUBTS),
        cautions: bits(doubt::CAUTIONS),
        choices: Vec::new(),
        modules: Vec::new(),
        functions: Vec::new(),
        shapes: Vec::new(),
    };
    for source in &sources {
        for item in &source.file.items {
            if let Item::Enum(item) = item
                && public(&item.vis)
                && is_choice(item)
                && !source.shapes
            {
                spec.choices.push(choice(source, item)?);
            }
        }
    }
    for source in &sources {
        for item in &source.file.items {
            let Item::Fn(item) = item else { continue };
            if !public(&item.vis) || source.module == "doubt" {
                continue;
            }
            if source.shapes || needs_alloc(&item.attrs) {
                let text = doc(&item.attrs);
                spec.shapes.push(Shape {
                    name: item.sig.ident.to_string(),
                    module: source.module.clone(),
                    summary: first_sentence(&text),
                });
            } else {
                spec.functions
                    .push(function(source, &sources, &spec.choices, item)?);
            }
        }
    }
    spec.modules = modules(&sources, &spec.functions)?;
    spec.functions.sort_by(|a, b| a.name.cmp(&b.name));
    spec.choices.sort_by(|a, b| a.name.cmp(&b.name));
    spec.shapes.sort_by(|a, b| a.name.cmp(&b.name));
    for pair in spec.functions.windows(2) {
        if pair[0].name == pair[1].name {
            return Err(format!("two functions are called {}", pair[0].name));
        }
    }
    Ok(spec)
}

/// Files with functions, each with the sentence it begins with, in the order of [`ORDER`].
fn modules(sources: &[Source], functions: &[Function]) -> Result<Vec<Module>, Fault> {
    let with_functions: BTreeSet<&str> = functions
        .iter()
        .map(|function| function.module.as_str())
        .collect();
    if let Some(unknown) = with_functions.iter().find(|name| !ORDER.contains(name)) {
        return Err(format!(
            "crates/xtask/src/parse.rs: ORDER lacks {unknown}: after which file would a reader look for it?"
        ));
    }
    let mut modules = Vec::new();
    for name in ORDER.iter().filter(|name| with_functions.contains(*name)) {
        let source = sources
            .iter()
            .find(|source| source.module == *name && !source.shapes);
        let summary = source.map_or_else(String::new, |source| {
            first_sentence(&doc(&source.file.attrs))
        });
        if summary.is_empty() {
            return Err(format!(
                "crates/recloth/src/{name}.rs: the file lacks a first sentence"
            ));
        }
        modules.push(Module {
            name: (*name).to_owned(),
            summary,
        });
    }
    Ok(modules)
}

struct Source {
    name: String,
    module: String,
    /// A file of outlines and pieces, outside the grammar.
    shapes: bool,
    file: syn::File,
}

impl Source {
    fn fault(&self, item: &impl Spanned, what: impl std::fmt::Display) -> Fault {
        format!(
            "crates/recloth/src/{}:{}: {what}",
            self.name,
            item.span().start().line
        )
    }
}

fn collect(folder: &Path, inside: &str, sources: &mut Vec<Source>) -> Result<(), Fault> {
    let mut names: Vec<_> = fs::read_dir(folder)
        .map_err(|error| format!("{}: {error}", folder.display()))?
        .filter_map(|entry| entry.ok()?.file_name().into_string().ok())
        .collect();
    names.sort();
    for name in names {
        let path = folder.join(&name);
        if path.is_dir() {
            // The folder of a module: what is in it is public under the module's own name.
            collect(&path, &format!("{inside}{name}/"), sources)?;
        } else if let Some(stem) = name.strip_suffix(".rs") {
            let text = fs::read_to_string(&path).map_err(|error| format!("{name}: {error}"))?;
            let name = format!("{inside}{name}");
            let file = syn::parse_file(&text).map_err(|error| {
                format!(
                    "crates/recloth/src/{name}:{}: {error}",
                    error.span().start().line
                )
            })?;
            let module = inside
                .split('/')
                .next()
                .filter(|part| !part.is_empty())
                .unwrap_or(stem);
            sources.push(Source {
                module: module.to_owned(),
                shapes: !inside.is_empty(),
                name,
                file,
            });
        }
    }
    Ok(())
}

fn bits(known: &[doubt::Bit]) -> Vec<Bit> {
    known
        .iter()
        .map(|bit| Bit {
            bit: bit.bit,
            name: bit.name.to_owned(),
            text: bit.text.to_owned(),
        })
        .collect()
}

fn public(visibility: &Visibility) -> bool {
    matches!(visibility, Visibility::Public(_))
}

fn needs_alloc(attributes: &[syn::Attribute]) -> bool {
    attributes.iter().any(|attribute| {
        attribute.path().is_ident("cfg")
            && attribute
                .meta
                .require_list()
                .is_ok_and(|list| list.tokens.to_string().contains("alloc"))
    })
}

fn is_choice(item: &syn::ItemEnum) -> bool {
    item.ident != "ErrorKind"
        && item.attrs.iter().any(|attribute| {
            attribute.path().is_ident("repr")
                && attribute
                    .meta
                    .require_list()
                    .is_ok_and(|list| list.tokens.to_string() == "i32")
        })
}

/// The doc comment, one leading space taken off each line.
fn doc(attributes: &[syn::Attribute]) -> String {
    let mut text = String::new();
    for attribute in attributes {
        if attribute.path().is_ident("doc")
            && let Ok(pair) = attribute.meta.require_name_value()
            && let syn::Expr::Lit(syn::ExprLit {
                lit: syn::Lit::Str(line),
                ..
            }) = &pair.value
        {
            let line = line.value();
            text.push_str(line.strip_prefix(' ').unwrap_or(&line));
            text.push('\n');
        }
    }
    text
}

/// The first paragraph on one line.
fn first_sentence(text: &str) -> String {
    text.split("\n\n")
        .next()
        .unwrap_or_default()
        .split_whitespace()
        .collect::<Vec<_>>()
        .join(" ")
}

fn choice(source: &Source, item: &syn::ItemEnum) -> Result<Choice, Fault> {
    let mut variants = Vec::new();
    for (index, variant) in item.variants.iter().enumerate() {
        let meaning = first_sentence(&doc(&variant.attrs));
        let value = match &variant.discriminant {
            Some((
                _,
                syn::Expr::Lit(syn::ExprLit {
                    lit: syn::Lit::Int(value),
                    ..
                }),
            )) => value.base10_parse::<i32>().ok(),
            _ => None,
        };
        if value != i32::try_from(index).ok() || meaning.is_empty() {
            return Err(source.fault(
                variant,
                format!(
                    "choice {}: each variant needs a doc comment and its number in order from 0",
                    item.ident
                ),
            ));
        }
        variants.push(Variant {
            name: variant.ident.to_string(),
            word: snake(&variant.ident.to_string()),
            value: value.unwrap_or_default(),
            meaning,
        });
    }
    Ok(Choice {
        name: item.ident.to_string(),
        module: source.module.clone(),
        summary: first_sentence(&doc(&item.attrs)),
        variants,
    })
}

fn function(
    source: &Source,
    sources: &[Source],
    choices: &[Choice],
    item: &syn::ItemFn,
) -> Result<Function, Fault> {
    let name = item.sig.ident.to_string();
    let fault = |what: String| source.fault(&item.sig.ident, format!("{name}: {what}"));
    let sections = Sections::read(&doc(&item.attrs));
    for (heading, text) in [
        ("a first sentence", &sections.summary),
        ("# Errors", &sections.errors),
        ("# Source", &sections.source),
        ("# Examples", &sections.example),
    ] {
        if text.trim().is_empty() {
            return Err(fault(format!("the doc comment lacks {heading}")));
        }
    }
    if !sections.example.contains("unwrap_err") && !sections.example.contains("is_err") {
        return Err(fault("no example shows an error".into()));
    }
    let mut rows = sections.table.iter();
    let mut arguments: Vec<Argument> = Vec::new();
    for input in &item.sig.inputs {
        let FnArg::Typed(input) = input else {
            return Err(fault("a method cannot cross into C".into()));
        };
        let Pat::Ident(pattern) = &*input.pat else {
            return Err(fault("a parameter needs a plain name".into()));
        };
        let parameter = pattern.ident.to_string();
        if ["out", "error", "py", "answer", "given", "door", "module"].contains(&&*parameter) {
            return Err(fault(format!(
                "{parameter}: this name is kept for the doors"
            )));
        }
        let kind = argument_kind(&input.ty, choices)
            .ok_or_else(|| fault(format!("{parameter}: this type is not in the grammar")))?;
        let row = rows
            .next()
            .ok_or_else(|| fault(format!("{parameter} has no row in the table")))?;
        let argument = argument(row, &parameter, kind, choices, &arguments)
            .map_err(|what| fault(format!("{parameter}: {what}")))?;
        arguments.push(argument);
    }
    if let Some(row) = rows.next() {
        return Err(fault(format!(
            "the table has a row that is no parameter: {}",
            row.join(" | ")
        )));
    }
    let inputs = arguments
        .iter()
        .filter(|argument| argument.kind != Kind::Fill);
    let mut defaulted = false;
    for argument in inputs {
        if defaulted && argument.default.is_none() {
            return Err(fault(format!(
                "{} follows a default and has none",
                argument.name
            )));
        }
        defaulted |= argument.default.is_some();
    }
    let answer = answer(sources, &item.sig.output, &sections.returns).map_err(fault)?;
    Ok(Function {
        name,
        module: source.module.clone(),
        summary: sections.summary,
        description: sections.description,
        arguments,
        answer,
        errors: sections.errors,
        source: sections.source,
        example: sections.example,
    })
}

/// A doc comment taken apart.
#[derive(std::default::Default)]
struct Sections {
    summary: String,
    description: String,
    table: Vec<Vec<String>>,
    errors: String,
    returns: String,
    source: String,
    example: String,
}

impl Sections {
    fn read(text: &str) -> Sections {
        let mut sections = Sections::default();
        let mut heading = "";
        let mut summary_done = false;
        for line in text.lines() {
            if let Some(name) = line.strip_prefix("# ")
                && ["Errors", "Returns", "Source", "Examples"].contains(&name)
            {
                heading = ["Errors", "Returns", "Source", "Examples"]
                    .into_iter()
                    .find(|known| *known == name)
                    .unwrap_or_default();
                continue;
            }
            if heading.is_empty() {
                if line.trim_start().starts_with('|') {
                    summary_done = true;
                    sections.table.push(cells(line));
                } else if !summary_done && line.trim().is_empty() {
                    summary_done = true;
                } else if !summary_done {
                    append(&mut sections.summary, line);
                } else {
                    append(&mut sections.description, line);
                }
                continue;
            }
            append(
                match heading {
                    "Errors" => &mut sections.errors,
                    "Returns" => &mut sections.returns,
                    "Source" => &mut sections.source,
                    _ => &mut sections.example,
                },
                line,
            );
        }
        // The heading row and the rule below it.
        sections.table.drain(..sections.table.len().min(2));
        for text in [
            &mut sections.summary,
            &mut sections.description,
            &mut sections.errors,
            &mut sections.returns,
            &mut sections.source,
            &mut sections.example,
        ] {
            // Links are for rustdoc; every other reader takes the name.
            *text = without_links(text.trim());
        }
        sections.summary = first_sentence(&sections.summary);
        sections
    }
}

fn append(text: &mut String, line: &str) {
    text.push_str(line);
    text.push('\n');
}

/// The names that links of rustdoc show.
fn without_links(text: &str) -> String {
    let mut text = text.replace("[`", "`").replace("`]", "`");
    while let Some(at) = text.find("`(crate::") {
        let target = text[at..].find(')').unwrap_or(text.len() - at - 1);
        text.replace_range(at + 1..=at + target, "");
    }
    text
}

/// The cells of a table's line; `\|` is a bar within a cell.
fn cells(line: &str) -> Vec<String> {
    let line = line.trim().trim_start_matches('|');
    let line = line
        .strip_suffix('|')
        .unwrap_or(line)
        .replace("\\|", "\u{0}");
    line.split('|')
        .map(|cell| cell.trim().replace('\u{0}', "|"))
        .collect()
}

fn type_text(ty: &Type) -> String {
    let text = match ty {
        Type::Reference(reference) => {
            let inner = type_text(&reference.elem);
            return if reference.mutability.is_some() {
                format!("&mut {inner}")
            } else {
                format!("&{inner}")
            };
        }
        Type::Slice(slice) => return format!("[{}]", type_text(&slice.elem)),
        Type::Path(path) => path.path.segments.last().map(|last| last.ident.to_string()),
        _ => None,
    };
    text.unwrap_or_default()
}

fn argument_kind(ty: &Type, choices: &[Choice]) -> Option<Kind> {
    Some(match type_text(ty).as_str() {
        "f64" => Kind::Number,
        "u32" => Kind::Count,
        "&str" => Kind::Text,
        "&[f64]" => Kind::Numbers,
        "&[u32]" => Kind::Counts,
        "&mut [f64]" => Kind::Fill,
        name => Kind::Choice(
            choices
                .iter()
                .find(|choice| choice.name == name)?
                .name
                .clone(),
        ),
    })
}

fn argument(
    row: &[String],
    name: &str,
    kind: Kind,
    choices: &[Choice],
    earlier: &[Argument],
) -> Result<Argument, String> {
    let [first, unit, range, default, meaning] = row else {
        return Err(format!("its row has {} cells, not 5", row.len()));
    };
    if first.trim_matches('`') != name {
        return Err(format!("the table has {first} in its place"));
    }
    if !UNITS.contains(&unit.as_str()) {
        return Err(format!("unknown unit {unit}"));
    }
    let wanted_unit = match kind {
        Kind::Count | Kind::Counts => Some("count"),
        Kind::Text => Some("text"),
        Kind::Choice(_) => Some("choice"),
        _ => None,
    };
    if let Some(wanted) = wanted_unit
        && unit != wanted
    {
        return Err(format!("its type wants the unit {wanted}, not {unit}"));
    }
    if meaning.is_empty() {
        return Err("no meaning is given".into());
    }
    let mut argument = Argument {
        name: name.to_owned(),
        kind,
        unit: unit.clone(),
        range: None,
        conditions: Vec::new(),
        items: None,
        default: None,
        meaning: meaning.clone(),
    };
    read_range(&mut argument, range, earlier)?;
    if default != "-" {
        argument.default = Some(match &argument.kind {
            Kind::Number | Kind::Count => {
                let value: f64 = number(default)?;
                let [low, high] = argument.range.unwrap_or([f64::MIN, f64::MAX]);
                if value < low || value > high {
                    return Err(format!("default {value} is out of range"));
                }
                Default::Number(value)
            }
            Kind::Choice(of) => {
                let known = choices
                    .iter()
                    .filter(|choice| &choice.name == of)
                    .flat_map(|choice| &choice.variants)
                    .any(|variant| &variant.word == default);
                if !known {
                    return Err(format!("default {default} is not one of {of}"));
                }
                Default::Word(default.clone())
            }
            _ => return Err("only a number, count or choice has a default".into()),
        });
    }
    Ok(argument)
}

fn number(text: &str) -> Result<f64, String> {
    text.trim()
        .parse()
        .map_err(|_| format!("{text} is not a number"))
}

fn read_range(argument: &mut Argument, text: &str, earlier: &[Argument]) -> Result<(), String> {
    let parts: Vec<&str> = text.split(',').map(str::trim).collect();
    let mut parts = parts.into_iter().peekable();
    let scalar = matches!(argument.kind, Kind::Number | Kind::Count);
    let list = matches!(argument.kind, Kind::Numbers | Kind::Counts);
    if !scalar && !list && argument.kind != Kind::Fill {
        return if text == "-" {
            Ok(())
        } else {
            Err(format!("a text or choice has the range -, not {text}"))
        };
    }
    if argument.kind == Kind::Fill {
        if parts.next() != Some("out") {
            return Err("a list to fill has the range `out, as OTHER`".into());
        }
    } else {
        let range = parts.next().unwrap_or_default();
        let range = if list {
            range
                .strip_suffix("each")
                .ok_or("the range of a list is `LOW..=HIGH each`")?
        } else {
            range
        };
        let (low, high) = range
            .split_once("..=")
            .ok_or_else(|| format!("the range is LOW..=HIGH, not {range}"))?;
        let (low, high) = (number(low)?, number(high)?);
        if low > high {
            return Err(format!("the range {low} to {high} is empty"));
        }
        argument.range = Some([low, high]);
    }
    for part in parts {
        if let Some(other) = part.strip_prefix("as ") {
            let words: Vec<&str> = other.split_whitespace().collect();
            let plus = match words[1..] {
                [] => 0,
                ["+", k] => k.parse::<i32>().map_err(|_| format!("bad number {k}"))?,
                ["-", k] => -k.parse::<i32>().map_err(|_| format!("bad number {k}"))?,
                _ => return Err(format!("cannot read `{part}`")),
            };
            let known = earlier.iter().any(|known| {
                known.name == words[0]
                    && matches!(known.kind, Kind::Numbers | Kind::Counts | Kind::Count)
            });
            if !known {
                return Err(format!("{} is no earlier list or count", words[0]));
            }
            argument.items = Some(Items::As {
                other: words[0].to_owned(),
                plus,
            });
        } else if let Some(items) = part.strip_suffix("items") {
            let (least, most) = items
                .split_once("..=")
                .ok_or_else(|| format!("cannot read `{part}`"))?;
            let whole = |text: &str| number(text).map(|value| value as u32);
            argument.items = Some(Items::Between([whole(least)?, whole(most)?]));
        } else if ["<=", ">=", "<", ">"]
            .iter()
            .any(|sign| part.starts_with(sign))
        {
            argument.conditions.push(part.to_owned());
        } else {
            return Err(format!("cannot read `{part}` in the range"));
        }
    }
    if (list || argument.kind == Kind::Fill) && argument.items.is_none() {
        return Err("say how many items the list has".into());
    }
    Ok(())
}

/// The answer from the return type; a record's fields from its struct.
fn answer(sources: &[Source], output: &ReturnType, returns: &str) -> Result<Answer, String> {
    let wrong = || {
        "the answer is Result<f64, u32, u64, LengthText or a struct of the core, Error>".to_owned()
    };
    let ReturnType::Type(_, ty) = output else {
        return Err(wrong());
    };
    let Type::Path(path) = &**ty else {
        return Err(wrong());
    };
    let last = path.path.segments.last().ok_or_else(wrong)?;
    let syn::PathArguments::AngleBracketed(arguments) = &last.arguments else {
        return Err(wrong());
    };
    let Some(syn::GenericArgument::Type(good)) = arguments.args.first() else {
        return Err(wrong());
    };
    let name = type_text(good);
    let kind = match name.as_str() {
        "f64" => AnswerKind::Number,
        "u32" | "u64" => AnswerKind::Count,
        "LengthText" => AnswerKind::Text,
        _ => AnswerKind::Record,
    };
    if kind != AnswerKind::Record {
        let (meaning, unit) = match kind {
            AnswerKind::Text => (returns.to_owned(), "text".to_owned()),
            _ => unit_at_end(&first_sentence(returns))
                .ok_or("`# Returns` is one sentence that ends in its unit in parentheses")?,
        };
        if meaning.is_empty() {
            return Err("the doc comment lacks `# Returns`".into());
        }
        let field = Field {
            name: "value".into(),
            whole: kind == AnswerKind::Count,
            unit,
            meaning,
        };
        if kind != AnswerKind::Text {
            typed(&field, &name)?;
        }
        return Ok(Answer {
            kind,
            record: None,
            summary: String::new(),
            fields: vec![field],
        });
    }
    // A draft may have the name of the record that it is made from.
    let (shapes, others): (Vec<&Source>, Vec<&Source>) =
        sources.iter().partition(|source| source.shapes);
    let item = others
        .into_iter()
        .chain(shapes)
        .flat_map(|source| &source.file.items)
        .find_map(|item| match item {
            Item::Struct(item) if item.ident == name => Some(item),
            _ => None,
        })
        .ok_or_else(|| format!("the struct {name} is not in the core"))?;
    let mut fields = Vec::new();
    for field in &item.fields {
        let field_name = field
            .ident
            .as_ref()
            .map(ToString::to_string)
            .unwrap_or_default();
        let (meaning, unit) =
            unit_at_end(&first_sentence(&doc(&field.attrs))).ok_or_else(|| {
                format!(
                    "{name}::{field_name}: its doc comment must end in a known unit in parentheses"
                )
            })?;
        let ty = type_text(&field.ty);
        let field = Field {
            name: field_name,
            whole: ty != "f64",
            unit,
            meaning,
        };
        typed(&field, &ty).map_err(|what| format!("{name}::{}: {what}", field.name))?;
        fields.push(field);
    }
    Ok(Answer {
        kind,
        record: Some(name),
        summary: first_sentence(&doc(&item.attrs)),
        fields,
    })
}

/// A number is `f64`, a count `u32`, a set of bits `u64`.
fn typed(field: &Field, ty: &str) -> Result<(), String> {
    if ty == field.rust_type() {
        Ok(())
    } else {
        Err(format!(
            "with the unit {} it is f64, u32 (a count) or u64 (bits), not {ty}",
            field.unit
        ))
    }
}

/// `Radius of the waist edge (mm).` as its meaning and its unit.
fn unit_at_end(sentence: &str) -> Option<(String, String)> {
    let body = sentence.trim().trim_end_matches('.');
    let (meaning, unit) = body.strip_suffix(')')?.rsplit_once('(')?;
    UNITS
        .contains(&unit)
        .then(|| (meaning.trim().to_owned(), unit.to_owned()))
}
