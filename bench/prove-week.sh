# ./prove week [COUNT]
# Lays out COUNT drawn weeks (200 without it), 100 weeks of real leagues and 200 small weeks beside every layout there is, and lets an independent judge and the rulebook look at them. The result goes to docs/proof/week.md.
set -euo pipefail
. bench/about.sh
count=${1:-200}
dotnet build tests/Seasonwright.Solver.Tests -c Release -v quiet -nologo
said=$(mktemp); trap 'rm -f "$said"' EXIT
failed=0
SEED=1 COUNT=$count WEEKS=100 SMALL=200 SHOW=10 tests/Seasonwright.Solver.Tests/bin/Release/net10.0/Seasonwright.Solver.Tests -class "*WeekProposalTests" -class "*WeekBruteForceTests" -class "*WeekMonotonyTests" -class "*WeekEdgeTests" -showLiveOutput -maxThreads 1 > "$said" 2>&1 || failed=1
sed -i 's/\x1b\[[0-9;]*m//g' "$said"
mkdir -p docs/proof
{
  echo "# Laying out a week"
  echo
  echo "\`./prove week $count\`: $count drawn weeks (seeds from 1), 100 weeks spread over the proposed years of ten clubs of open fixture lists, 200 small weeks beside every layout there is."
  echo
  about
  echo
  if [ $failed = 1 ]; then echo "**Not all held:**"; echo; grep -A3 'FAIL' "$said" | sed 's/^/    /' | cut -c1-200; else echo "Every layout keeps every condition by a judge that shares no code with the model; taken, with the practices it assumed, none brings a finding of the rules of day and week above a caution that is not forced; every small week's is the best there is; every \"why not there\" is what the judge finds there."; fi
  echo
  echo "| weeks | median ms | 95 % | largest ms | largest gap % | not proven |"
  echo "| --- | ---: | ---: | ---: | ---: | ---: |"
  for kind in "seed .*" ".*, week .*"; do
    sed -n "s/.*\[OUTPUT\] $kind: week \([0-9]*\) ms gap \([0-9.]*\) % \(True\|False\).*/\1 \2 \3/p" "$said" | sort -n | awk -v kind="$kind" '
      { ms[NR]=$1; if ($2>gap) gap=$2; open+=($3=="False") }
      END { print "| " NR (kind ~ /^seed/ ? " drawn" : " of real leagues") " | " ms[int((NR+1)/2)] " | " ms[int(NR*0.95)] " | " ms[NR] " | " gap+0 " | " open+0 " |" }'
  done
  echo
  sed -n 's/.*\[OUTPUT\] \([0-9]* layouts\)$/Small weeks: \1 that keep every condition were tried./p' "$said"
  echo
  echo "Ten of the weeks, to be looked at (points of matches + practices + ours; \`?\` an assumed practice, in brackets what a session is an exposure of):"
  echo
  sed -n 's/.*\[OUTPUT\] //p' "$said" | awk '/^shown /{on=1; sub(/^shown /, ""); print ""} !/^ /&&!/: [A-Z][A-Za-z]* [A-Z]/{on=0} on{print "    " $0}' | sed 's/ *$//'
} > docs/proof/week.md
cat docs/proof/week.md
