# ./prove open [EDITS]
# Time to open a season of many edits with and without its snapshots, beside a plain read of the same rows; fresh process each.
# The result goes to docs/proof/open.md. Run from the repository's root by ./prove.
set -euo pipefail
edits=${1:-5000}
. bench/about.sh
dotnet build bench/Seasonwright.Bench.Open -c Release -v quiet -nologo
tool=bench/Seasonwright.Bench.Open/bin/Release/net10.0/Seasonwright.Bench.Open.dll
data=$(mktemp -d); trap 'rm -rf "$data"' EXIT
dotnet "$tool" make "$data/with" "$edits"
cp -r "$data/with" "$data/without"
dotnet "$tool" discard "$data/without"
median() { sort -n -k1,1 | awk '{a[NR]=$0} END {print a[int((NR+1)/2)]}'; }
# Interleaved, so that a change of the machine's mood meets all alike.
for run in 1 2 3 4 5 6 7; do
  dotnet "$tool" plain "$data/with" >> "$data/plain"
  dotnet "$tool" open "$data/with" >> "$data/open-with"
  dotnet "$tool" open "$data/without" >> "$data/open-without"
done
read -r plain plainp rows < <(median < "$data/plain")
read -r with1 with1p with2 with2p withm _ < <(median < "$data/open-with")
read -r without1 without1p without2 without2p withoutm _ < <(median < "$data/open-without")
mkdir -p docs/proof
{
  echo "# Opening a long season"
  echo
  echo "\`./prove open $edits\`: a season of 53 weeks with $rows entries (dragged loads, painted phases) made through the desk; 7 fresh processes each, interleaved; each line is the run whose first opening took the median time."
  echo
  about
  echo "- \"first\" includes opening the data folder and compiling everything on the way; \"again\" is the same in the same process"
  echo "- the processor columns are time used, not waited for"
  echo
  echo "| | first, ms | processor, ms | again, ms | processor, ms | memory grown, MiB |"
  echo "|---|---|---|---|---|---|"
  echo "| plain read of the rows, nothing made of them | $plain | $plainp | | | |"
  echo "| open, with snapshots | $with1 | $with1p | $with2 | $with2p | $withm |"
  echo "| open, every step replayed and its hash compared | $without1 | $without1p | $without2 | $without2p | $withoutm |"
} > docs/proof/open.md
cat docs/proof/open.md
