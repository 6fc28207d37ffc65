# ./prove start [STARTS]
# From start to first page. The result goes to docs/proof/start.md. Run from the repository's root by ./prove.
set -euo pipefail
size=${1:-7}
. bench/about.sh
publish
in_browser start "From start to first page" "the published workspace started as a process of its own; the pages are fetched one after the other, so each time holds the ones before it." "$size"
