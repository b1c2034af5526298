//! Libraries that a test has a program load before the C library.

use std::path::{Path, PathBuf};
use std::process::{self, Command};

/// Builds the library of this name from its source beside this file, in C, for this run.
pub fn build(name: &str) -> PathBuf {
    let file = format!("{name}-{}.so", process::id());
    let library = Path::new(env!("CARGO_TARGET_TMPDIR")).join(file);
    let source = format!("{}/tests/support/{name}.c", env!("CARGO_MANIFEST_DIR"));
    let built = Command::new("cc")
        .args(["-shared", "-fPIC", "-O1", "-o"])
        .arg(&library)
        .args([&source, "-ldl"])
        .status();
    assert!(built.unwrap().success());
    library
}
