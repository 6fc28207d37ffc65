# ./prove kill [KILLS] [EDITS] [SEED]
# Kills a writer (SIGKILL) at random moments while it appends, and checks that every acknowledged gesture is there exactly once.
# The result goes to docs/proof/kill.md. Run from the repository's root by ./prove.
set -euo pipefail
kills=${1:-20} edits=${2:-1000} seed=${3:-$(( $(date +%s) % 1000000 ))}
. bench/about.sh
dotnet build bench/Seasonwright.Bench.Kill -c Release -v quiet -nologo
tool=bench/Seasonwright.Bench.Kill/bin/Release/net10.0/Seasonwright.Bench.Kill.dll
data=$(mktemp -d); trap 'rm -rf "$data"' EXIT
result=0
rounds=$(dotnet "$tool" prove "$data/kill" "$seed" "$edits" "$kills") || result=1
speed=$(for run in 1 2 3; do dotnet "$tool" speed "$data/speed$run" "$seed" "$edits"; done)
mkdir -p docs/proof
{
  echo "# Killed while writing"
  echo
  echo "\`./prove kill $kills $edits $seed\`: $kills rounds; in each a writer appends $edits gestures (one to six entries, one or two streams), printing each one when it is acknowledged, and is ended by SIGKILL at a random moment (round 1 during its start). Then: \`integrity_check\`; every acknowledged gesture there exactly once with its answer, whole, in order; at most one more (in flight); a second writer sends all $edits again and every acknowledged one gets the first answer; in the end all $edits are there once."
  echo
  if [ $result = 0 ]; then echo "**Result: no acknowledged gesture lost, none doubled.**"; else echo "**Result: PROBLEMS, see below.**"; fi
  echo
  about
  echo "- file system: $(stat -f -c %T "$data" 2>/dev/null || echo unknown)"
  echo "- what it does not show: a power cut. That an acknowledgement comes only after the flush to the disk is shown by the trace in \`tests/Seasonwright.Store.Tests\` (FlushBeforeAcknowledge)."
  echo
  echo "$rounds"
  echo
  echo "## Speed of the same appends"
  echo
  echo "WAL with \`synchronous=FULL\`, one gesture after the other (report, no threshold); three runs:"
  echo
  echo "$speed" | sed 's/^/- /'
} > docs/proof/kill.md
cat docs/proof/kill.md
exit $result
