# ./prove redate [REDATES]
# Redate and redraw. The result goes to docs/proof/redate.md. Run from the repository's root by ./prove.
set -euo pipefail
size=${1:-60}
. bench/about.sh
publish
in_browser redate "Redate and redraw" "the published workspace and a real Chromium without a window, 1440 x 1100; the demo's year. The button is clicked by trusted pointer events; times are the page's own clock." "$size"
