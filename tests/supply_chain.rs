//! What is built in besides our own: licences that allow handing the program on, no crate in two
//! versions without a reason, nothing from elsewhere than the registry, no code of ours that is unsafe.

use std::collections::{BTreeMap, BTreeSet};
use std::process::Command;

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
    let output = cargo.output().unwrap();
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
