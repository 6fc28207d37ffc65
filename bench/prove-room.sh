# ./prove room [COUNT]
# Gives COUNT made-up weeks of each of five rooms their places (10 without it), and small rooms beside every layout there is. The result goes to docs/proof/room.md.
set -euo pipefail
. bench/about.sh
count=${1:-10}
dotnet build tests/Seasonwright.Solver.Tests -c Release -v quiet -nologo
said=$(mktemp); trap 'rm -f "$said"' EXIT
failed=0
COUNT=$count SMALL=300 tests/Seasonwright.Solver.Tests/bin/Release/net10.0/Seasonwright.Solver.Tests -class "*RoomProposalTests" -class "*RoomBruteForceTests" -class "*RoomIntervalTests" -class "*RoomLawTests" -showLiveOutput -maxThreads 1 > "$said" 2>&1 || failed=1
sed -i 's/\x1b\[[0-9;]*m//g' "$said"
mkdir -p docs/proof
{
  echo "# Several teams in one room"
  echo
  echo "\`./prove room $count\`: $count made-up weeks (seeds from 1) of each of five rooms, three sessions a team; in the last three everybody can come from 17:00 only. 300 small rooms beside every layout there is; 80 days of fixed times beside the known answer of interval scheduling (Carlisle and Lloyd 1995)."
  echo
  about
  echo
  if [ $failed = 1 ]; then echo "**Not all held:**"; echo; grep -A3 'FAIL' "$said" | sed 's/^/    /' | cut -c1-200; else echo "No layout has a clash by a judge of its own (opening hours and windows are read by the same two lines as in the model, and tested by themselves); every small room's is the best there is (fewest without a place, teams alike, nearest to the wishes); as many fixed times find a place as so many coaches can hold; what is locked stays; the same week gives the same answer; every \"why not there\" is what the judge finds there."; fi
  echo
  echo "\"By hand\": session by session in the order of the file, each to the free start that costs least. What it costs is of the sessions it placed, which are fewer."
  echo
  echo "| room | sessions asked | median ms | largest ms | left out | by hand | fewest not proven | cost | by hand | wishes not proven |"
  echo "| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |"
  sed -n 's/.*\[OUTPUT\] room \(.*\): seed [0-9]* \([0-9]*\) ms asked \([0-9]*\) missed \([0-9]*\) fewest [0-9]* \(True\|False\) cost \([0-9]*\) bound [0-9]* \(True\|False\) hand \([0-9]*\) \([0-9]*\)$/\1|\2|\3|\4|\5|\6|\7|\8|\9/p' "$said" \
    | awk -F'|' '!($1 in n) { order[++rooms]=$1 } { n[$1]++; ms[$1]=ms[$1] " " $2; asked[$1]=$3; out[$1]+=$4; open[$1]+=($5=="False"); cost[$1]+=$6; wishes[$1]+=($7=="False"); hand[$1]+=$8; price[$1]+=$9 }
      function sorted(text, a,   k, i, j, t) { k=split(text, a, " "); for (i=2;i<=k;i++) for (j=i; j>1 && a[j-1]+0>a[j]+0; j--) { t=a[j]; a[j]=a[j-1]; a[j-1]=t } return k }
      END { for (r=1; r<=rooms; r++) { name=order[r]; k=sorted(ms[name], a); c=n[name]; printf "| %s | %d | %d | %d | %.1f | %.1f | %d of %d | %.0f | %.0f | %d of %d |\n", name, asked[name], a[int((k+1)/2)], a[k], out[name]/c, hand[name]/c, open[name], c, cost[name]/c, price[name]/c, wishes[name], c } }'
  echo
  sed -n 's/.*\[OUTPUT\] \([0-9]* layouts, .*\)$/Small rooms: \1./p' "$said"
  echo
  echo "What is told of an over-full one (20 teams, evenings, the first week):"
  echo
  awk '/\[OUTPUT\] room 20 teams x 3, evenings: seed 1 /{on=1; next} /\[OUTPUT\] room /{on=0} on && /\[OUTPUT\]   /{sub(/.*\[OUTPUT\]   /, ""); print "    " $0}' "$said"
} > docs/proof/room.md
cat docs/proof/room.md
