//! What is installed beside the program: made by the program itself, put in its places and
//! taken away again, and valid for those who read it.

use crate::in_time;

use in_time::InTime as _;
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

use tempfile::TempDir;

const PROGRAM: &str = env!("CARGO_BIN_EXE_marlinspeak");
const COMMANDS: [&str; 8] = [
    "steps", "fit", "rig", "shelf", "tie", "sheet", "order", "doctor",
];

fn run(command: &mut Command) -> Output {
    let output = command.stdin(Stdio::null()).output_in_time();
    assert!(
        output.status.success(),
        "{command:?}: {}{}",
        String::from_utf8_lossy(&output.stdout),
        String::from_utf8_lossy(&output.stderr)
    );
    output
}

/// The folder that the program writes what is installed to.
fn artifacts() -> TempDir {
    let folder = TempDir::new().unwrap();
    run(Command::new(PROGRAM)
        .arg("install-artifacts")
        .arg(folder.path()));
    folder
}

fn read(folder: &TempDir, name: &str) -> String {
    fs::read_to_string(folder.path().join(name)).unwrap()
}

/// Every file below a folder, as its path from there.
fn files(folder: &Path) -> BTreeSet<PathBuf> {
    let mut found = BTreeSet::new();
    let mut folders = vec![folder.to_owned()];
    while let Some(next) = folders.pop() {
        for entry in fs::read_dir(next).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else {
                found.insert(path.strip_prefix(folder).unwrap().to_owned());
            }
        }
    }
    found
}

#[test]
fn every_command_has_a_page_and_can_be_completed() {
    let artifacts = artifacts();
    let main = read(&artifacts, "man/marlinspeak.1");
    for heading in [
        "NAME",
        "SYNOPSIS",
        "OPTIONS",
        "SUBCOMMANDS",
        "FILES",
        "\"EXIT STATUS\"",
    ] {
        assert!(main.contains(&format!(".SH {heading}\n")), "{heading}");
    }
    for command in COMMANDS {
        let page = read(&artifacts, &format!("man/marlinspeak-{command}.1"));
        assert!(page.contains(".SH NAME\n"), "{command}");
        assert!(
            main.contains(&format!("marlinspeak\\-{command}(1)")),
            "{command}"
        );
    }
    assert!(read(&artifacts, "man/marlinspeak-fit.1").contains("\\-\\-cover"));
    assert!(read(&artifacts, "man/marlinspeak-shelf-export.1").contains("\\-\\-replace"));
    for file in ["marlinspeak.bash", "_marlinspeak", "marlinspeak.fish"] {
        let completion = read(&artifacts, &format!("completions/{file}"));
        for word in COMMANDS.into_iter().chain(["leads", "export"]) {
            assert!(completion.contains(word), "{file}: {word}");
        }
        assert!(
            !completion.contains("install-artifacts"),
            "{file} offers what is hidden"
        );
    }
    assert!(!main.contains("install-artifacts"));
    run(Command::new("bash")
        .arg("-n")
        .arg(artifacts.path().join("completions/marlinspeak.bash")));
}

#[test]
fn bash_completes_commands_and_options() {
    let artifacts = artifacts();
    let script = r#"
        . "$1"
        COMP_WORDS=(marlinspeak fi) COMP_CWORD=1
        _marlinspeak marlinspeak fi marlinspeak
        echo "${COMPREPLY[*]}"
        COMP_WORDS=(marlinspeak fit --cov) COMP_CWORD=2
        _marlinspeak marlinspeak --cov fit
        echo "${COMPREPLY[*]}"
    "#;
    let file = artifacts.path().join("completions/marlinspeak.bash");
    let output = run(Command::new("bash").args(["-c", script, "bash"]).arg(file));
    assert_eq!(String::from_utf8_lossy(&output.stdout), "fit\n--cover\n");
}

#[test]
fn the_icon_is_a_knot_in_every_size() {
    let artifacts = artifacts();
    for size in [32_u32, 48, 64, 128, 256, 512] {
        let name = format!("icons/marlinspeak-{size}.png");
        let icon = image::open(artifacts.path().join(name)).unwrap();
        assert_eq!((icon.width(), icon.height()), (size, size));
        let pixels = icon.into_rgba8().into_raw();
        // Cord takes a good part of it, and not all; one leg is bright.
        let share = |is_of: fn(&[u8]) -> bool| {
            let count = pixels.chunks_exact(4).filter(|pixel| is_of(pixel)).count();
            count * 100 / (size * size) as usize
        };
        let cord = share(|pixel| pixel[2] > 180 && pixel[0] < 140);
        let bright = share(|pixel| pixel[0] > 180 && pixel[2] < 120);
        assert!((15..50).contains(&cord), "{size}: {cord} per cent");
        assert!((4..20).contains(&bright), "{size}: {bright} per cent");
    }
    let svg = read(&artifacts, "icons/marlinspeak.svg");
    assert!(svg.starts_with("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 512 512\">"));
    assert!(svg.trim_end().ends_with("</svg>") && svg.matches("<path").count() > 10);
    assert!(!svg.contains("NaN") && !svg.contains("inf"));
}

#[test]
fn what_is_installed_is_taken_away_again() {
    let artifacts = artifacts();
    let root = TempDir::new().unwrap();
    let others = root.path().join("share/man/man1/marlin.1");
    fs::create_dir_all(others.parent().unwrap()).unwrap();
    fs::write(&others, "of another program").unwrap();
    let before = files(root.path());
    let task = |task: &str| {
        run(Command::new("resources/packaging/install.sh")
            .arg(task)
            .arg(PROGRAM)
            .arg(artifacts.path())
            .arg(root.path()));
    };
    task("install");
    let installed = files(root.path());
    for place in [
        "bin/marlinspeak",
        "share/applications/marlinspeak.desktop",
        "share/metainfo/marlinspeak.metainfo.xml",
        "share/icons/hicolor/scalable/apps/marlinspeak.svg",
        "share/icons/hicolor/48x48/apps/marlinspeak.png",
        "share/man/man1/marlinspeak.1",
        "share/man/man1/marlinspeak-doctor.1",
        "share/bash-completion/completions/marlinspeak",
        "share/zsh/site-functions/_marlinspeak",
        "share/fish/vendor_completions.d/marlinspeak.fish",
    ] {
        assert!(
            installed.contains(Path::new(place)),
            "{place}: {installed:#?}"
        );
    }
    let version = run(Command::new(root.path().join("bin/marlinspeak")).arg("--version"));
    assert!(version.stdout.starts_with(b"marlinspeak "));
    task("uninstall");
    assert_eq!(files(root.path()), before);
}

#[test]
fn desktops_and_readers_of_pages_find_no_fault() {
    let artifacts = artifacts();
    // The project has no domain of its own that its id could begin with.
    run(Command::new("appstreamcli").args([
        "validate",
        "--no-net",
        "--override=cid-desktopapp-is-not-rdns=info",
        "resources/packaging/marlinspeak.metainfo.xml",
    ]));
    run(Command::new("desktop-file-validate").arg("resources/packaging/marlinspeak.desktop"));
    for page in fs::read_dir(artifacts.path().join("man")).unwrap() {
        let page = page.unwrap().path();
        let output = run(Command::new("man")
            .args(["--warnings", "-l"])
            .arg(&page)
            .env("LC_ALL", "C.UTF-8")
            .env("MANWIDTH", "80"));
        let faults = String::from_utf8_lossy(&output.stderr).into_owned();
        assert_eq!(faults, "", "{}", page.display());
        assert!(output.stdout.len() > 300, "{}", page.display());
    }
}

#[test]
fn the_versions_agree() {
    let version = env!("CARGO_PKG_VERSION");
    let changes = fs::read_to_string("resources/packaging/changelog").unwrap();
    assert!(changes.starts_with(&format!("marlinspeak ({version}) ")));
    let about = fs::read_to_string("resources/packaging/marlinspeak.metainfo.xml").unwrap();
    let newest = about.split("<release ").nth(1).unwrap();
    assert!(
        newest.starts_with(&format!("version=\"{version}\"")),
        "{newest}"
    );
}
