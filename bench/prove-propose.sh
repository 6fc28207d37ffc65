# ./prove propose [COUNT]
# Proposes the years of real leagues and of COUNT drawn seasons (200 without it) and lets the rulebook judge them: time and gap of
# each stage, findings. One worker, one process. The result goes to docs/proof/propose.md.
set -euo pipefail
. bench/about.sh
count=${1:-200}
dotnet build tests/Seasonwright.Solver.Tests -c Release -v quiet -nologo
said=$(mktemp); trap 'rm -f "$said"' EXIT
failed=0
SEED=1 COUNT=$count tests/Seasonwright.Solver.Tests/bin/Release/net10.0/Seasonwright.Solver.Tests -class "*ProposalTests" -showLiveOutput -maxThreads 1 > "$said" 2>&1 || failed=1
mkdir -p docs/proof
{
  echo "# Proposing a year"
  echo
  echo "\`./prove propose $count\`: the leagues of StructureTests and $count drawn seasons (seeds from 1), stage by stage. Not beside a plan made by hand yet."
  echo
  about
  echo
  if [ $failed = 1 ]; then echo "**Not all held:**"; echo; grep -A3 'FAIL' "$said" | sed 's/\x1b\[[0-9;]*m//g; s/^/    /' | cut -c1-200; echo; fi
  sed 's/\x1b\[[0-9;]*m//g' "$said" | sed -n 's/.*\[OUTPUT\] \(.*\): A \([0-9]*\) ms, C \([0-9]*\) ms gap \([0-9.]*\) % \(True\|False\), B \([0-9]*\) ms.*/\2 \3 \4 \6/p' | sort -n -k2 | awk '
    { a[NR]=$1; c[NR]=$2; b[NR]=$4; if ($3>gap) gap=$3; if ($3>1) over++; if ($3>0.03) open++; sum[NR]=$1+$2+$4 }
    function mid(v, n,  i,j,t) { for(i=1;i<=n;i++) for(j=i+1;j<=n;j++) if (v[j]<v[i]) { t=v[i]; v[i]=v[j]; v[j]=t } return v[int((n+1)/2)] }
    END { print "| stage | median ms | largest ms |"; print "| --- | ---: | ---: |"
      m=mid(a,NR); print "| structure | " m " | " a[NR] " |"; m=mid(c,NR); print "| loads | " m " | " c[NR] " |"; m=mid(b,NR); print "| emphasis and tests | " m " | " b[NR] " |"; m=mid(sum,NR); print "| all | " m " | " sum[NR] " |"
      print ""; print NR " seasons; largest gap of the loads " gap " %, above 1 %: " over+0 ", left open at the limit of work (above 0.03 %): " open+0 "." }'
  echo
  echo "Unforced findings by rule, seasons with practices entered by hand included (there practices alone may go beyond a limit):"
  echo
  sed 's/\x1b\[[0-9;]*m//g' "$said" | sed -n 's/.*\[OUTPUT\]    \(Caution\|Warning\|Stop\) \([a-z-]*\) .*/\1 \2/p' | sort | uniq -c | awk '{ print "- " $3 ": " $1 " (" tolower($2) ")" }'
} > docs/proof/propose.md
cat docs/proof/propose.md
