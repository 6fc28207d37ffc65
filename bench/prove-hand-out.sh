# ./prove hand-out [WORKBOOKS]
# Redate-and-poster here beside recalculate-and-print of the same year in a spreadsheet program, every output timed, and
# a thousand posters. The result goes to docs/proof/hand-out.md. Run from the repository's root by ./prove.
set -euo pipefail
count=${1:-12}
. bench/about.sh
dotnet build bench/Seasonwright.Bench.HandOut -c Release -v quiet -nologo
tool=bench/Seasonwright.Bench.HandOut/bin/Release/net10.0/Seasonwright.Bench.HandOut.dll
data=$(mktemp -d); trap 'rm -rf "$data"' EXIT
mkdir "$data/books" "$data/printed"
dotnet "$tool" workbooks "$data/books" "$count"
ms() { date +%s%N | cut -b1-13; }
office() { soffice --headless --norestore "-env:UserInstallation=file://$data/profile" --convert-to pdf --outdir "$data/printed" "$@" >/dev/null 2>&1; }
# Once before it counts: the profile is made then.
office "$data/books/year-1.xlsx"; rm -f "$data"/printed/*
from=$(ms); office "$data/books/year-1.xlsx"; alone=$(($(ms) - from))
from=$(ms); office "$data"/books/*.xlsx; all=$(($(ms) - from))
[ "$(ls "$data/printed" | wc -l)" = "$count" ] || { echo "The spreadsheet program did not print all." >&2; exit 1; }
each=$(( (all - alone) / (count - 1) ))
from=$(ms); dotnet "$tool" redate 2 >/dev/null; process=$(($(ms) - from))
ours=$(dotnet "$tool" redate 200)
warm=$(echo "$ours" | awk -F'|' '{gsub(/ /, "", $4); print $4}')
outputs=$(dotnet "$tool" each 60)
read -r early late < <(dotnet "$tool" grow 1000)
mkdir -p docs/proof
{
  echo "# Handing out"
  echo
  echo "\`./prove hand-out $count\`: the demo's year at 53 weeks. Compared with: our own workbook of the same year, recalculated and printed as PDF by LibreOffice without a window ($(soffice --version 2>/dev/null | head -1)), $count workbooks with $count first days."
  echo
  about
  echo
  echo "| another first day, then on paper | ms |"
  echo "|---|---|"
  echo "| LibreOffice, one workbook, with the start of its process | $alone |"
  echo "| here, two posters, with the start of the process | $process |"
  echo "| LibreOffice, each further workbook of one run | $each |"
  echo "| here, each further poster of one run, median | $warm |"
  awk -v a="$each" -v b="$warm" 'BEGIN { printf "| **ratio once warm** | **%.0f times as fast** |\n", a / b }'
  echo
  echo "The workbook prints a table of the year and lists; the poster is a drawing: the same year on paper, not the same page."
  echo
  echo "| output | first, ms | median of the others, ms | slowest of the others, ms | bytes |"
  echo "|---|---|---|---|---|"
  echo "$outputs"
  echo
  echo "A thousand A3 posters of changing first days in one process: $early MiB held after the first hundred, $late MiB after the last."
} > docs/proof/hand-out.md
cat docs/proof/hand-out.md
