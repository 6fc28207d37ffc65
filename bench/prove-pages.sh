# ./prove pages [PAGES]
# Many pages open. The result goes to docs/proof/pages.md. Run from the repository's root by ./prove.
set -euo pipefail
size=${1:-20}
. bench/about.sh
publish
in_browser pages "Many pages open" "the published workspace; Year pages of the demo in one Chromium without a window. Memory is the working set of the workspace's process alone, the browser's is not in it." "$size"
