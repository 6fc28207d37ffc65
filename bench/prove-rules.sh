# ./prove rules
# Time of all live rules on a made-up season, beside laying the same year out. The result goes to docs/proof/rules.md.
set -euo pipefail
. bench/about.sh
dotnet build bench/Seasonwright.Bench.Rules -c Release -v quiet -nologo
result=$(dotnet bench/Seasonwright.Bench.Rules/bin/Release/net10.0/Seasonwright.Bench.Rules.dll)
mkdir -p docs/proof
{
  echo "# Checking a season"
  echo
  echo "\`./prove rules\`: 53 made-up weeks with a practice and a session of ours on every day, all qualities every week, a match or two a week, tests and journeys; 400 drags of one week's load, one process, interleaved. The bound is 10 ms."
  echo
  about
  echo
  echo "$result"
} > docs/proof/rules.md
cat docs/proof/rules.md
