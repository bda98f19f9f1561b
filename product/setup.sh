# Shared by the scripts of this folder; to be sourced, not run.
# Everything that is told goes to the standard error, which leaves the standard output to answers.

product=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd -P)
root=$(dirname "$product")
suite=$product/target/fettlebench

say() { printf '%s\n' "$*" >&2; }

has_screen() { [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ] || [ "$(uname -s)" != Linux ]; }

# --- what must be installed ------------------------------------------------------------------

# Files rather than package names: they hold for every system, and are quicker to look at.
has() {
  case $1 in
    libgtk-3-0) ldconfig -p 2>/dev/null | grep -q 'libgtk-3\.so\.0' || /sbin/ldconfig -p 2>/dev/null | grep -q 'libgtk-3\.so\.0' ;;
    xvfb) type -P Xvfb >/dev/null ;;
    units) [ -r /usr/share/units/definitions.units ] ;;
    fonts-dejavu-core) compgen -G '/usr/share/fonts/*/dejavu*/DejaVuSans.ttf' >/dev/null || compgen -G '/usr/share/fonts/*/DejaVuSans.ttf' >/dev/null ;;
    adwaita-icon-theme) [ -f /usr/share/icons/Adwaita/index.theme ] ;;
    librsvg2-common) compgen -G '/usr/lib*/gdk-pixbuf-2.0/*/loaders/*svg.so' >/dev/null || compgen -G '/usr/lib/*/gdk-pixbuf-2.0/*/loaders/*svg.so' >/dev/null ;;
  esac
}

window_packages='libgtk-3-0 fonts-dejavu-core adwaita-icon-theme librsvg2-common'

# missing PACKAGE...: prints those that are not there.
missing() {
  local package
  for package in "$@"; do has "$package" || printf '%s ' "$package"; done
}

as_root() {
  if [ "$(id -u)" = 0 ]; then "$@"; else sudo -n "$@"; fi
}

can_install() {
  type -P apt-get >/dev/null && { [ "$(id -u)" = 0 ] || sudo -n true 2>/dev/null; }
}

# install PACKAGE...: installs what is missing; fails when it cannot, having said what to do.
install() {
  [ "$(uname -s)" = Linux ] || return 0 # macOS and Windows have their windows built in
  local wanted
  wanted=$(missing "$@")
  [ -n "$wanted" ] || return 0
  if can_install; then
    say "Installing ${wanted% } ..."
    as_root env DEBIAN_FRONTEND=noninteractive apt-get update -qq >&2
    # shellcheck disable=SC2086 # one word a package
    as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $wanted >/dev/null
    wanted=$(missing "$@")
    [ -n "$wanted" ] || return 0
    say "After installing, this is still missing: ${wanted% }"
  else
    say "Missing: ${wanted% }"
  fi
  tell_how "$wanted"
  return 1
}

tell_how() {
  say "How to get it:"
  say "  Debian, Ubuntu:  sudo apt-get install --no-install-recommends ${1% }"
  say "  Fedora:          sudo dnf install $(fedora_names "$1")"
  say "then run the same command again."
}

fedora_names() {
  printf '%s' "$1" | sed -e 's/libgtk-3-0/gtk3/' -e 's/xvfb/xorg-x11-server-Xvfb/' \
    -e 's/fonts-dejavu-core/dejavu-sans-fonts/' -e 's/librsvg2-common/librsvg2/' -e 's/ $//'
}

# A JDK and Maven are only needed to build; the started suite looks for its Java itself.
need_build_tools() {
  local java=${JAVA_HOME:+$JAVA_HOME/bin/} version wanting=0
  version=$("${java}javac" -version 2>&1 | sed -n 's/^javac \([0-9]*\).*/\1/p')
  if ! [ "${version:-0}" -ge 17 ]; then
    say "Missing: a Java development kit, 17 or newer (found: ${version:-none})."
    say "  Debian, Ubuntu:  sudo apt-get install openjdk-17-jdk-headless"
    say "  Fedora:          sudo dnf install java-17-openjdk-devel"
    say "  macOS:           brew install openjdk@17"
    say "  Windows:         winget install EclipseAdoptium.Temurin.17.JDK (then use Git Bash)"
    wanting=1
  fi
  if ! type -P mvn >/dev/null; then
    say "Missing: Maven 3.8 or newer."
    say "  Debian, Ubuntu:  sudo apt-get install maven"
    say "  Fedora:          sudo dnf install maven"
    say "  macOS:           brew install maven"
    say "  Windows:         from maven.apache.org, its bin folder on the PATH"
    wanting=1
  fi
  return $wanting
}

# --- a screen of our own ---------------------------------------------------------------------

screen=

# open_screen SIZE: starts a virtual screen on a free number and makes it the one in use.
open_screen() {
  local told
  told=$(mktemp)
  Xvfb -displayfd 7 -screen 0 "$1x24" -nolisten tcp 7>"$told" >/dev/null 2>&1 &
  screen=$!
  for _ in $(seq 100); do
    [ -s "$told" ] && break
    sleep 0.1
  done
  DISPLAY=:$(cat "$told")
  rm -f "$told"
  if [ "$DISPLAY" = : ]; then
    say "The virtual screen (Xvfb) does not start."
    exit 2
  fi
  export DISPLAY
  unset WAYLAND_DISPLAY
}

close_screen() { [ -z "$screen" ] || kill "$screen" 2>/dev/null; }

# --- building --------------------------------------------------------------------------------

# A folder counts as newer when something was taken out of it.
is_built() {
  [ -f "$suite/built" ] && [ -z "$(find "$root/pom.xml" "$root/features" "$root"/bundles/*/pom.xml \
    "$root"/bundles/*/bnd.bnd "$root"/bundles/*/src/main "$product/pom.xml" "$product/src" \
    -newer "$suite/built" -print -quit 2>/dev/null)" ]
}

# Shows what Maven is at, one line a module, out of its log on the standard input.
show_progress() {
  awk '
    /Downloaded from/ { if (++fetched % 50 == 0) { print "  libraries fetched: " fetched; fflush() } }
    /Building org\.fettlebench/ {
      sub(/.*Building org\.fettlebench\.?/, ""); split($0, words, " ")
      print "  " words[3] " " (words[2] ~ /\[/ ? "" : words[1]); fflush() }
  ' >&2
}

build() {
  need_build_tools || exit 2
  mkdir -p "$product/target"
  exec 8>"$product/target/build.lock"
  if type -P flock >/dev/null; then flock 8; fi
  if is_built; then return; fi # another call has just done it
  local log=$product/target/build.log stamp=$product/target/built.new
  say "Building the suite (the first time, libraries are fetched too) ..."
  touch "$stamp"
  if ! mvn -B -f "$root/pom.xml" -T 2 -pl product -am -Dmaven.test.skip=true -Dspotless.check.skip=true \
    -Dcheckstyle.skip=true package 2>&1 | tee "$log" | show_progress || ! grep -q 'BUILD SUCCESS' "$log"; then
    say "The build failed. Its last words, more in $log:"
    grep -E 'ERROR' "$log" | head -20 >&2
    exit 2
  fi
  say "  measuring one start, to make the next ones quicker"
  "$suite/bin/make-class-data" >/dev/null 2>&1
  mv "$stamp" "$suite/built"
  exec 8>&-
}

need_suite() { is_built || build; }
