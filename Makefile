# make run        builds Marlinspeak and opens it
# make install    builds it and installs it, under /usr/local unless PREFIX says otherwise
# make uninstall  takes it away again
# make deb        builds a Debian package
# make test       runs every test, the real window among them
# make test-deb   installs that package in a fresh Debian, opens the program there, removes it
# make check      formatting, lints and documentation
# make bench      speed and memory, as one table; make bench-parts for what is behind it
# make twice      builds what is handed on twice and compares the two
# make soak       two hundred power cuts while presses arrive, and the knocks that were held out
#
# On Debian and its kin each target installs the system packages that it finds missing.

CARGO ?= cargo
PREFIX ?= /usr/local
TARGET := $(or $(CARGO_TARGET_DIR),target)
TESTED := --locked --profile tests
BINARY := $(TARGET)/dist/release/marlinspeak
ARTIFACTS := $(TARGET)/install-artifacts
SUDO := $(shell [ "$$(id -u)" = 0 ] || echo sudo)

# To build: a C linker, the headers of sound, of devices and of D-Bus.
BUILD_PACKAGES := gcc libc6-dev pkg-config libasound2-dev libudev-dev libdbus-1-dev
# To run: the speech service with a voice, and what a window needs.
RUN_PACKAGES := speech-dispatcher speech-dispatcher-espeak-ng espeak-ng \
	libx11-6 libx11-xcb1 libxcursor1 libxi6 libxrandr2 libxkbcommon0 libxkbcommon-x11-0 \
	libwayland-client0
# To test: a display of X11 and one of Wayland without a screen, hands and eyes for each, a sound server for
# a bench that hears itself, and those who read what is installed.
TEST_PACKAGES := dbus-daemon xvfb xdotool xinput sway wtype grim wl-clipboard flite \
	pulseaudio pulseaudio-utils libasound2-plugins appstream desktop-file-utils man-db
# To measure: a sound server that plays to nobody, a recorder, and what the bare speaking program
# is built with.
BENCH_PACKAGES := pulseaudio pulseaudio-utils libspeechd-dev libclang-dev
# To make a Debian package, and to try it.
DEB_PACKAGES := dpkg-dev
TEST_DEB_PACKAGES := debootstrap

.PHONY: run release twice install-artifacts install uninstall deb test waiting-tests computing-tests test-deb check \
	bench bench-parts soak snapshots \
	pictures looks build-packages run-packages test-packages bench-packages

run: run-packages
	$(CARGO) run --profile quick --locked

# What is handed on holds no path of the machine that built it, in a folder of its own: other flags
# would have everything built anew for the benchmarks.
CARGO_PLACE := $(or $(CARGO_HOME),$(HOME)/.cargo)
WITHOUT_PATHS = --remap-path-prefix=$(CARGO_PLACE)=/cargo --remap-path-prefix=$(CURDIR)=/marlinspeak \
	--remap-path-prefix=$(shell rustc --print sysroot)=/rust

release: build-packages
	env -u CARGO_ENCODED_RUSTFLAGS RUSTFLAGS="$(WITHOUT_PATHS)" \
		$(CARGO) build --release --locked --target-dir $(TARGET)/dist
	@! grep -aq -e "$(CARGO_PLACE)" -e "$(CURDIR)" $(BINARY) || { echo "The program holds a path of this machine."; exit 1; }

# Builds what is handed on twice, from nothing, and holds the two against each other.
twice: build-packages
	rm -rf $(TARGET)/dist && $(MAKE) release && mv $(BINARY) $(TARGET)/first-build
	rm -rf $(TARGET)/dist && $(MAKE) release && cmp $(BINARY) $(TARGET)/first-build

# Man pages, completions and icons, made by the program itself.
install-artifacts: release
	$(BINARY) install-artifacts $(ARTIFACTS)

install: install-artifacts $(if $(DESTDIR),,run-packages)
	$(call as_owner,resources/packaging/install.sh install $(BINARY) $(ARTIFACTS) $(DESTDIR)$(PREFIX))

uninstall:
	$(call as_owner,resources/packaging/install.sh uninstall $(BINARY) $(ARTIFACTS) $(DESTDIR)$(PREFIX))

deb: install-artifacts
	$(call need,$(DEB_PACKAGES))
	CARGO="$(CARGO)" resources/packaging/deb.sh $(BINARY) $(ARTIFACTS) $(TARGET)/deb $(RUN_PACKAGES)

test-deb: deb
	$(call need,$(TEST_DEB_PACKAGES))
	$(SUDO) resources/packaging/test-deb.sh $(TARGET)/deb/marlinspeak_*.deb

# Tests that wait for windows, clocks and disks for most of their time run beside those that compute.
WAITING_TESTS := clocks doctor failing_disk hands_free keeping knocked_tie terminal_session tie_in_terminal tried_knocks voice wayland window
ALL_TESTS := $(sort $(basename $(notdir $(wildcard tests/*.rs))) $(patsubst tests/%/main.rs,%,$(wildcard tests/*/main.rs)))
COMPUTING_TESTS := $(filter-out $(WAITING_TESTS),$(ALL_TESTS))

# What is built for other systems is looked at too, so all that the lock names is fetched first.
test: test-packages
	$(CARGO) fetch --locked
	$(CARGO) test $(TESTED) --lib --tests --no-run
	$(MAKE) --no-print-directory --jobs 2 waiting-tests computing-tests

waiting-tests:
	$(CARGO) test $(TESTED) $(WAITING_TESTS:%=--test %)

computing-tests:
	$(CARGO) test $(TESTED) --lib $(COMPUTING_TESTS:%=--test %)
	$(CARGO) test $(TESTED) --doc

check: build-packages
	$(CARGO) fmt --check
	$(CARGO) clippy $(TESTED) --all-targets --all-features -- -D warnings
	$(CARGO) clippy $(TESTED) --no-default-features -- -D warnings
	RUSTDOCFLAGS="-D warnings" $(CARGO) doc $(TESTED) --no-deps --document-private-items

bench: bench-packages
	$(CARGO) build --release --manifest-path tests/bench/bare/Cargo.toml --target-dir $(TARGET)/bare
	BARE_SPEECH=$(abspath $(TARGET))/bare/release/bare-speech \
		$(CARGO) bench --locked --bench table --bench app --bench live --bench whole

# What is behind the figures of computing and painting, part by part.
bench-parts: build-packages
	$(CARGO) bench --locked --bench knot --bench fit --bench rope --bench picture --bench raster --bench picture_view --bench sheet

soak: test-packages
	CUTS=200 $(CARGO) test $(TESTED) --test keeping no_power_cut
	$(CARGO) test $(TESTED) --test knocks of_what_was_held_out_ -- --ignored

# Writes the pictured screens and the told scripts anew. Look at the screens and
# read the scripts through before committing them.
snapshots: build-packages
	rm -f tests/data/snapshots/*.png
	WRITE_SNAPSHOTS=1 $(CARGO) test $(TESTED) --test screens looks_as_it_did
	WRITE_SNAPSHOTS=1 $(CARGO) test $(TESTED) --test telling whole_script::
	WRITE_SNAPSHOTS=1 $(CARGO) test $(TESTED) --test telling fixtures::
	WRITE_SNAPSHOTS=1 $(CARGO) test $(TESTED) --test telling refused::

# Makes the pictures in the README anew, with the program itself.
pictures: build-packages
	$(CARGO) test $(TESTED) --test screens readme_pictures:: -- --ignored

# Pictures of every screen at every size, in every language, by night and by day: look at them after a
# change to what is seen. LOOKS_LANG, LOOKS_SCREEN, LOOKS_SIZE and LOOKS_GROUND name some of them,
# LOOKS_DISTANCE how far away the tyer is, in millimetres.
looks: build-packages
	LOOKS="$(abspath $(TARGET))/looks" $(CARGO) test $(TESTED) --test screens looks::every_screen -- --ignored
	@echo "$(abspath $(TARGET))/looks"

# $(call as_owner,COMMAND): runs it, with a password where only root may write.
define as_owner
	@place="$(DESTDIR)$(PREFIX)"; \
	while [ ! -e "$$place" ]; do place=$$(dirname "$$place"); done; \
	if [ -w "$$place" ]; then $(1); else $(SUDO) $(1); fi
endef

# $(call need,PACKAGES): installs those that are missing.
define need
	@missing=""; \
	if command -v dpkg-query >/dev/null; then \
		for package in $(1); do \
			dpkg-query -W -f='$${db:Status-Status}' $$package 2>/dev/null | grep -qx installed \
				|| missing="$$missing $$package"; \
		done; \
		if [ -n "$$missing" ]; then \
			echo "Installing$$missing"; \
			$(SUDO) apt-get update -qq && \
			$(SUDO) env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $$missing; \
		fi; \
	else \
		echo "This is not a Debian system: the Debian packages needed are $(1); see that their like are installed."; \
	fi
endef

build-packages:
	$(call need,$(BUILD_PACKAGES))

run-packages: build-packages
	$(call need,$(RUN_PACKAGES))

test-packages: run-packages
	$(call need,$(TEST_PACKAGES))

bench-packages: test-packages
	$(call need,$(BENCH_PACKAGES))
