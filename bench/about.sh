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
