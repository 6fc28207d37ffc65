# ./prove propose [COUNT]
# Proposes the ten kinds of season, the years of 38 clubs and COUNT drawn seasons (200 without it) and lets the rulebook judge them:
# time and gap of each stage, findings; beside a plan by hand, with two workers, with several structures, repaired. One process. The result goes to docs/proof/propose.md.
set -euo pipefail
. bench/about.sh
count=${1:-200}
dotnet build tests/Seasonwright.Solver.Tests -c Release -v quiet -nologo
said=$(mktemp); trap 'rm -f "$said"' EXIT
failed=0
SEED=1 COUNT=$count CLUBS=28 MEASURE=1 tests/Seasonwright.Solver.Tests/bin/Release/net10.0/Seasonwright.Solver.Tests -class "*ProposalTests" -class "*MadeSeasonTests" -showLiveOutput -maxThreads 1 > "$said" 2>&1 || failed=1
mkdir -p docs/proof
{
  echo "# Proposing a year"
  echo
  echo "\`./prove propose $count\`: the ten kinds of season of tests/Cases/solver/seasons, 38 clubs of open fixture lists (ten of them looked at while the engine was made, 28 not) and $count drawn seasons (seeds from 1), stage by stage."
  echo
  about
  echo
  if [ $failed = 1 ]; then echo "**Not all held:**"; echo; grep -A3 'FAIL' "$said" | sed 's/\x1b\[[0-9;]*m//g; s/^/    /' | cut -c1-200; echo; fi
  sed 's/\x1b\[[0-9;]*m//g' "$said" | sed -n 's/.*\[OUTPUT\] \(.*\): A \([0-9]*\) ms, C \([0-9]*\) ms gap \([0-9.]*\) % \(True\|False\), B \([0-9]*\) ms.*/\2 \3 \4 \6/p' | sort -n -k2 | awk '
    { a[NR]=$1; c[NR]=$2; b[NR]=$4; if ($3>gap) gap=$3; if ($3>1) over++; if ($3>0.1) open++; sum[NR]=$1+$2+$4 }
    function mid(v, n,  i,j,t) { for(i=1;i<=n;i++) for(j=i+1;j<=n;j++) if (v[j]<v[i]) { t=v[i]; v[i]=v[j]; v[j]=t } return v[int((n+1)/2)] }
    END { print "| stage | median ms | largest ms |"; print "| --- | ---: | ---: |"
      m=mid(a,NR); print "| structure | " m " | " a[NR] " |"; m=mid(c,NR); print "| loads | " m " | " c[NR] " |"; m=mid(b,NR); print "| emphasis and tests | " m " | " b[NR] " |"; m=mid(sum,NR); print "| all | " m " | " sum[NR] " |"
      print ""; print NR " seasons; largest gap of the loads " gap " %, above 1 %: " over+0 ", left open at the limit of work (above 0.1 %): " open+0 "." }'
  echo
  echo "Beside the stages, medians and largest over the same seasons (the kinds with wishes among them):"
  echo
  sed 's/\x1b\[[0-9;]*m//g' "$said" | sed -n 's/.*\[OUTPUT\] measured //p' | awk '
    { for (i=1;i<=17;i++) v[i,NR]=$i; w2+=($6>0); w3+=($7>0); w5+=($8>0); g2+=$6/$9; g3+=$7/$9; g5+=$8/$9; better+=($10>$11); same+=($10==$11); ours+=$12; hand+=$13; kept+=($17==0); share[NR]=$16>0?100*$15/$16:0; diff[NR]=$10-$11 }
    function mid(k,  i,j,t,n,a) { for(i=1;i<=NR;i++) a[i]=v[k,i]; for(i=1;i<=NR;i++) for(j=i+1;j<=NR;j++) if (a[j]+0<a[i]+0) { t=a[i]; a[i]=a[j]; a[j]=t } most=a[NR]; return a[int((NR+1)/2)] }
    function row(name,k,  m) { m=mid(k); print "| " name " | " m " | " most " |" }
    END { for(i=1;i<=NR;i++) { v[20,i]=share[i]; v[21,i]=diff[i] }
      print "| what | median | largest |"; print "| --- | ---: | ---: |"
      row("time to the first plan, ms",1); row("loads to a gap of 1 %, ms",2); row("loads with two workers, ms",3); row("their gap, %",4)
      row("five structures with their loads, ms",5); row("a week lost: repaired in, ms",14); row("weeks it changes",15); printf "| their share of the weeks left, %% | %.0f | %.0f |\n", mid(20), most
      row("worst preparedness on a key match above that of the plan by hand, per mille",21)
      print ""; printf "Worst preparedness on a key match better than by hand in %d of %d seasons, the same in %d. Findings that can be mended: %d in the proposals, %d in the plans by hand.\n\n", better, NR, same, ours, hand
      printf "The best of 2, 3 and 5 structures after their loads beats the first in %d, %d and %d seasons, by %.2f, %.2f and %.2f %% of the value of the loads in the mean of all.\n\n", w2, w3, w5, 100*g2/NR, 100*g3/NR, 100*g5/NR
      printf "Repaired without a change the plan stays as it is in %d of %d.\n", kept, NR }'
  echo
  echo "The plan by hand: in preparation three rising weeks (60, 70, 80 points, then five more each time, 95 at most) and one of 60 %; in the competition 72 points with one match, 68 with more, every fourth week 60; 22 after it. Common practice, no source. It has no tapers. \"A week lost\" is one two fifths into the season."
  echo
  echo "Unforced findings by rule, seasons with practices entered by hand included (there practices alone may go beyond a limit):"
  echo
  sed 's/\x1b\[[0-9;]*m//g' "$said" | sed -n 's/.*\[OUTPUT\]    \(Caution\|Warning\|Stop\) \([a-z-]*\) .*/\1 \2/p' | sort | uniq -c | awk '{ print "- " $3 ": " $1 " (" tolower($2) ")" }'
} > docs/proof/propose.md
cat docs/proof/propose.md
