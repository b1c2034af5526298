//! What is built in besides our own: licences that allow handing the program on, no crate in two
//! versions without a reason, nothing from elsewhere than the registry, no code of ours that is unsafe.

#[path = "support/files.rs"]
mod files;
#[path = "support/in_time.rs"]
mod in_time;

use in_time::InTime as _;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use files::files;
use serde_json::Value;
use spdx::{Expression, ParseMode};

/// Licences under which a part may be handed on in a program of another licence, when its notice goes
/// along (`resources/packaging/notices.sh` sees to that).
const ALLOWED: [&str; 12] = [
    "MIT",
    "Apache-2.0",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "0BSD",
    "ISC",
    "Zlib",
    "BSL-1.0",
    "CC0-1.0",
    "Unlicense",
    "Unicode-3.0",
    // Of a file, not of the program: whoever changes a file of that crate hands the change on. It is
    // built in as it comes.
    "MPL-2.0",
];

/// Crates under the MPL, each known by name: another one is looked at first.
const MPL: [&str; 1] = ["option-ext"];

/// What cargo knows of the packages of the lock; those that are built here, or of every system.
fn packages(here_only: bool) -> Vec<Value> {
    let mut cargo = Command::new(env!("CARGO"));
    cargo
        .args(["metadata", "--format-version", "1", "--locked", "--offline"])
        .current_dir(env!("CARGO_MANIFEST_DIR"));
    if here_only {
        let host = format!("{}-unknown-linux-gnu", std::env::consts::ARCH);
        cargo.args(["--filter-platform", &host]);
    }
    let output = cargo.output_in_time();
    let told = String::from_utf8_lossy(&output.stderr);
    assert!(output.status.success(), "{told}");
    let document: Value = serde_json::from_slice(&output.stdout).unwrap();
    let resolved: BTreeSet<String> = document["resolve"]["nodes"]
        .as_array()
        .unwrap()
        .iter()
        .map(|node| node["id"].as_str().unwrap().to_owned())
        .collect();
    let all = document["packages"].as_array().unwrap().clone();
    all.into_iter()
        .filter(|package| resolved.contains(package["id"].as_str().unwrap()))
        .collect()
}

fn name(package: &Value) -> &str {
    package["name"].as_str().unwrap()
}

#[test]
fn every_licence_lets_the_program_be_handed_on() {
    let packages = packages(true);
    assert!(packages.len() > 200, "{}", packages.len());
    let mut of_files = BTreeSet::new();
    for package in &packages {
        let told = package["license"].as_str().unwrap_or_default();
        let licence = Expression::parse_mode(told, ParseMode::LAX)
            .unwrap_or_else(|error| panic!("{}: {error}", name(package)));
        let within = |allowed: &[&str]| {
            licence.evaluate(|wanted| {
                let id = wanted.license.id().map_or("", |id| id.name);
                allowed.contains(&id)
            })
        };
        assert!(within(&ALLOWED), "{}: {told}", name(package));
        if !within(&ALLOWED[..ALLOWED.len() - 1]) {
            of_files.insert(name(package).to_owned());
        }
    }
    assert_eq!(of_files, BTreeSet::from(MPL.map(str::to_owned)));
}

#[test]
fn nothing_comes_from_elsewhere_than_the_registry() {
    for package in packages(false) {
        let source = package["source"].as_str();
        let is_ours = name(&package) == env!("CARGO_PKG_NAME");
        assert!(
            source.map_or(is_ours, |source| source.starts_with("registry+")),
            "{}: {source:?}",
            name(&package)
        );
    }
    // What is fetched is held against its checksum.
    let lock = include_str!("../Cargo.lock");
    let count = |field: &str| lock.lines().filter(|line| line.starts_with(field)).count();
    assert_eq!(count("checksum = "), count("source = "));
}

/// A crate in two versions is built and handed on twice. Each that is so stands in a list with who
/// wants the older one; one that is so no longer is struck from it.
#[test]
fn no_crate_is_built_twice_without_a_reason() {
    let mut versions: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for package in packages(true) {
        versions
            .entry(name(&package).to_owned())
            .or_default()
            .insert(package["version"].as_str().unwrap().to_owned());
    }
    let twice: BTreeSet<&str> = versions
        .iter()
        .filter(|(_, versions)| versions.len() > 1)
        .map(|(name, _)| name.as_str())
        .collect();
    let known: BTreeMap<&str, &str> = include_str!("data/supply_chain/twice.txt")
        .lines()
        .filter(|line| !line.starts_with('#'))
        .map(|line| line.split_once(": ").unwrap())
        .collect();
    assert!(known.values().all(|reason| !reason.trim().is_empty()));
    assert_eq!(twice, known.keys().copied().collect());
}

/// What the registry's own list says of a version, as far as cargo has kept it: the JSON of its line.
fn listed(lists: &[PathBuf], name: &str, version: &str) -> Option<Value> {
    let folder = match name.len() {
        1 => PathBuf::from("1"),
        2 => PathBuf::from("2"),
        3 => Path::new("3").join(&name[..1]),
        _ => Path::new(&name[..2]).join(&name[2..4]),
    };
    let contents = lists
        .iter()
        .find_map(|list| fs::read(list.join(&folder).join(name)).ok())?;
    // Behind a head each version and its line, with a zero after either.
    let mut parts = contents.split(|byte| *byte == 0);
    parts.find(|part| *part == version.as_bytes())?;
    serde_json::from_slice(parts.next()?).ok()
}

/// Asked of what cargo keeps of the registry on this machine, which it renews whenever it looks for a
/// version: a crate that was withdrawn since then is not seen. Advisories need a list that only a
/// network has.
#[test]
fn nothing_in_the_lock_was_withdrawn_from_the_registry() {
    let home = std::env::var_os("CARGO_HOME").map_or_else(
        || PathBuf::from(std::env::var_os("HOME").unwrap()).join(".cargo"),
        PathBuf::from,
    );
    let lists: Vec<PathBuf> = fs::read_dir(home.join("registry/index"))
        .unwrap()
        .map(|registry| registry.unwrap().path().join(".cache"))
        .collect();
    let mut seen = 0;
    for package in packages(true) {
        let version = package["version"].as_str().unwrap();
        let Some(listed) = listed(&lists, name(&package), version) else {
            continue;
        };
        seen += 1;
        let was_withdrawn = listed["yanked"].as_bool();
        assert_eq!(was_withdrawn, Some(false), "{} {version}", name(&package));
    }
    assert!(seen > 200, "{seen}");
}

#[test]
fn no_code_of_ours_is_unsafe_or_lets_any_be() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let manifest = fs::read_to_string(root.join("Cargo.toml")).unwrap();
    assert!(manifest.contains("unsafe_code = \"forbid\""));
    let sources = files(&root.join("src"), "rs");
    assert!(sources.len() > 200);
    for source in sources {
        let text = fs::read_to_string(&source).unwrap();
        // What is written in a comment is no code.
        let code = text
            .lines()
            .filter(|line| !line.trim_start().starts_with("//"));
        let unsafe_lines =
            code.filter(|line| line.contains("unsafe ") || line.contains("unsafe_code"));
        assert_eq!(unsafe_lines.count(), 0, "{}", source.display());
    }
}
