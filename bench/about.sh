# Sourced by the proofs: which code was measured, on what machine, and how busy that was.
# What is measured is what is built when a proof begins, whatever is committed meanwhile.
commit="$(git rev-parse --short HEAD)$([ -z "$(git status --porcelain -- src bench run)" ] || echo ' with uncommitted changes')"
machine="$(uname -s) $(uname -m), $(getconf _NPROCESSORS_ONLN) cores, $(awk '/MemTotal/ {print int($2 / 1048576 + 0.5)}' /proc/meminfo 2>/dev/null || echo unknown) GiB, .NET $(dotnet --version); shared with other work"
load() { cut -d' ' -f1 /proc/loadavg 2>/dev/null || echo unknown; }
load_before=$(load)

# The workspace as ./run publishes it, in $program; it goes with the proof.
publish() {
  workspace=$(mktemp -d); trap 'rm -rf "$workspace"' EXIT
  dotnet publish src/Seasonwright.Web -c Release -o "$workspace" -v quiet -nologo --self-contained false >/dev/null
  program="$workspace/Seasonwright.Web.dll"
}

# Lines about where and on what a proof ran.
about() {
  echo "- commit: $commit"
  echo "- machine: $machine; load before: $load_before, after: $(load)"
}

# Runs one of the browser's proofs and writes what it says: NAME TITLE INTRODUCTION SIZE [NOTES].
in_browser() {
  dotnet build bench/Seasonwright.Bench.Browser -c Release -v quiet -nologo >/dev/null
  local result
  result=$(dotnet bench/Seasonwright.Bench.Browser/bin/Release/net10.0/Seasonwright.Bench.Browser.dll "$1" "$program" "$4")
  mkdir -p docs/proof
  { echo "# $2"; echo; echo "\`./prove $1 $4\`: $3"; echo; about; echo "- browser: $(chromium --version 2>/dev/null | head -1)"; echo; echo "$result"; [ -z "${5:-}" ] || { echo; echo "$5"; }; } > "docs/proof/$1.md"
  cat "docs/proof/$1.md"
}
