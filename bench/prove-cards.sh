# ./prove cards [COUNT]
# COUNT cards (1000 without it) written beside the same words on as many plain pages, and what 30 athletes do after one changed cell. The result goes to docs/proof/cards.md.
set -euo pipefail
. bench/about.sh
count=${1:-1000}
dotnet build bench/Seasonwright.Bench.HandOut -c Release -v quiet -nologo
result=$(dotnet bench/Seasonwright.Bench.HandOut/bin/Release/net10.0/Seasonwright.Bench.HandOut.dll cards "$count")
figures=$(dotnet bench/Seasonwright.Bench.HandOut/bin/Release/net10.0/Seasonwright.Bench.HandOut.dll figures)
mkdir -p docs/proof
{
  echo "# Cards"
  echo
  echo "\`./prove cards $count\`: a session of the demo for $count invented athletes, every tenth restricted, half with maxima of their own. Compared with: the same words on as many pages, one line each, by the same painter, with nothing measured, fitted or drawn."
  echo
  about
  echo
  echo "| what | first, ms | median of the others, ms | slowest of the others, ms | bytes or people |"
  echo "|---|---:|---:|---:|---:|"
  echo "$result"
  echo
  echo "Figures of a bar's weight on the cards of that session, A4, and how large they are from two metres; a letter that normal sight just reads is 5 minutes of arc high (from memory):"
  echo
  echo "| cards a page | height, mm | minutes of arc from 2 m |"
  echo "|---:|---:|---:|"
  echo "$figures"
} > docs/proof/cards.md
cat docs/proof/cards.md
