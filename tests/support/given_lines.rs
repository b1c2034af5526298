//! Commands that are given lines.

use crate::in_time::InTime as _;
use std::io::Write as _;
use std::process::{Command, Output, Stdio};

/// Runs a command that is given these lines, to its end.
pub fn run(command: &mut Command, lines: &str) -> Output {
    let mut child = command
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    let mut input = child.stdin.take().unwrap();
    input.write_all(lines.as_bytes()).unwrap();
    drop(input);
    child.output_in_time()
}
