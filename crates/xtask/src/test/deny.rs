//! What dependencies must keep to: licences, where they come from, and which are not wanted. The rules are in
//! `crates/xtask/deny.toml`.

use std::{
    collections::{BTreeMap, BTreeSet},
    fs,
};

use serde::Deserialize;
use spdx::{Expression, Licensee, ParseMode};

use super::run::{Context, Count, output};

const RULES: &str = "crates/xtask/deny.toml";
/// What is handed out, beside the crates that are published: the doors.
const DOORS: &[&str] = &["recloth-c", "recloth-python"];

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Rules {
    handed_out: Vec<String>,
    tools: Vec<String>,
    one_version: Vec<String>,
    banned: BTreeMap<String, String>,
}

#[derive(Deserialize)]
struct Metadata {
    packages: Vec<Package>,
    resolve: Resolve,
}

#[derive(Deserialize)]
struct Package {
    id: String,
    name: String,
    version: String,
    license: Option<String>,
    source: Option<String>,
    /// An empty list: not published.
    publish: Option<Vec<String>>,
}

#[derive(Deserialize)]
struct Resolve {
    nodes: Vec<Node>,
}

#[derive(Deserialize)]
struct Node {
    id: String,
    deps: Vec<Dependency>,
}

#[derive(Deserialize)]
struct Dependency {
    pkg: String,
    dep_kinds: Vec<Kind>,
}

#[derive(Deserialize)]
struct Kind {
    /// None for what is linked; `dev` and `build` for the others.
    kind: Option<String>,
}

/// A check a package and rule.
pub(crate) fn tests(context: &Context) -> Result<Count, String> {
    let text = fs::read_to_string(context.root.join(RULES))
        .map_err(|error| format!("{RULES}: {error}"))?;
    let rules: Rules = toml::from_str(&text).map_err(|error| format!("{RULES}: {error}"))?;
    let text = output(&mut context.cargo("metadata --all-features --format-version 1"))?;
    let metadata: Metadata = serde_json::from_str(&text).map_err(|error| error.to_string())?;
    let wrong = wrong(&rules, &metadata);
    for what in &wrong {
        println!("{what}");
    }
    let linked = handed_out(&metadata).len();
    println!(
        "{} packages, {linked} of them handed out",
        metadata.packages.len()
    );
    Ok(Count {
        passed: (metadata.packages.len() - wrong.len().min(metadata.packages.len())) as u32,
        failed: wrong.len() as u32,
        skipped: 0,
    })
}

fn wrong(rules: &Rules, metadata: &Metadata) -> Vec<String> {
    let mut wrong = Vec::new();
    let linked = handed_out(metadata);
    let mut registries = BTreeSet::new();
    let mut versions: BTreeMap<&str, BTreeSet<&str>> = BTreeMap::new();
    for package in &metadata.packages {
        let name = format!("{} {}", package.name, package.version);
        let out = linked.contains(package.id.as_str());
        versions
            .entry(&package.name)
            .or_default()
            .insert(&package.version);
        let more: &[String] = if out { &[] } else { &rules.tools };
        let licence = package.license.as_deref().unwrap_or_default();
        if !allowed(licence, rules.handed_out.iter().chain(more)) {
            let part = if out { "handed out" } else { "a tool" };
            wrong.push(format!("{name}, {part}: its licence is {licence:?}"));
        }
        if let Some(why) = rules.banned.get(&package.name)
            && out
        {
            wrong.push(format!("{name} is banned: {why}"));
        }
        registries.extend(&package.source);
    }
    let odd = |source: &&&String| !source.starts_with("registry+");
    wrong.extend(
        registries
            .iter()
            .filter(odd)
            .map(|source| format!("a package comes from {source}")),
    );
    if registries.len() > 1 {
        wrong.push(format!("packages come from {} places", registries.len()));
    }
    for name in &rules.one_version {
        let found = versions.get(name.as_str()).map_or(0, BTreeSet::len);
        if found != 1 {
            wrong.push(format!("{found} versions of {name}"));
        }
    }
    wrong
}

/// What is linked into what is handed out.
fn handed_out(metadata: &Metadata) -> BTreeSet<&str> {
    let ours = |package: &&Package| {
        package.source.is_none()
            && (package.publish.is_none() || DOORS.contains(&package.name.as_str()))
    };
    let mut waiting: Vec<&str> = metadata
        .packages
        .iter()
        .filter(ours)
        .map(|package| package.id.as_str())
        .collect();
    let mut found = BTreeSet::new();
    while let Some(id) = waiting.pop() {
        if !found.insert(id) {
            continue;
        }
        let nodes = metadata.resolve.nodes.iter().filter(|node| node.id == id);
        let linked =
            |dependency: &&Dependency| dependency.dep_kinds.iter().any(|kind| kind.kind.is_none());
        waiting.extend(
            nodes
                .flat_map(|node| &node.deps)
                .filter(linked)
                .map(|dependency| dependency.pkg.as_str()),
        );
    }
    found
}

/// Whether a licence, as a package writes it, can be kept to by keeping to these.
fn allowed<'a>(licence: &str, known: impl Iterator<Item = &'a String>) -> bool {
    let known: Vec<Licensee> = known
        .filter_map(|name| Licensee::parse(name).ok())
        .collect();
    // Some write `MIT/Apache-2.0`.
    Expression::parse_mode(licence, ParseMode::LAX).is_ok_and(|licence| {
        licence.evaluate(|wanted| known.iter().any(|one| one.satisfies(wanted)))
    })
}

#[cfg(test)]
mod tests {
    use super::{Metadata, Rules, allowed, wrong};

    #[test]
    fn licences_are_read_as_they_are_written() {
        let known = ["MIT".to_owned(), "Apache-2.0".to_owned()];
        for (licence, good) in [
            ("MIT", true),
            ("MIT/Apache-2.0", true),
            ("GPL-3.0-only OR MIT", true),
            ("MIT AND GPL-3.0-only", false),
            ("GPL-3.0-only", false),
            ("", false),
        ] {
            assert_eq!(allowed(licence, known.iter()), good, "{licence}");
        }
    }

    #[test]
    fn every_rule_can_be_broken() {
        let rules: Rules = toml::from_str(
            "handed_out = ['MIT']\ntools = ['MPL-2.0']\none_version = ['twice']\nbanned = { clock = 'no time' }",
        )
        .expect("rules");
        let linked = r#"[{"kind": null}]"#;
        let text = format!(
            r#"{{"packages": [
                {{"id": "a", "name": "recloth", "version": "1", "license": "MIT", "source": null, "publish": null}},
                {{"id": "b", "name": "twice", "version": "1", "license": "MPL-2.0", "source": "registry+x", "publish": null}},
                {{"id": "c", "name": "twice", "version": "2", "license": "MPL-2.0", "source": "git+y", "publish": null}},
                {{"id": "d", "name": "clock", "version": "1", "license": "MIT", "source": "registry+x", "publish": null}}],
              "resolve": {{"nodes": [
                {{"id": "a", "deps": [{{"pkg": "b", "dep_kinds": {linked}}}, {{"pkg": "d", "dep_kinds": {linked}}},
                    {{"pkg": "c", "dep_kinds": [{{"kind": "dev"}}]}}]}}]}}}}"#
        );
        let metadata: Metadata = serde_json::from_str(&text).expect("metadata");
        assert_eq!(
            wrong(&rules, &metadata),
            [
                "twice 1, handed out: its licence is \"MPL-2.0\"",
                "clock 1 is banned: no time",
                "a package comes from git+y",
                "packages come from 2 places",
                "2 versions of twice",
            ]
        );
    }
}
