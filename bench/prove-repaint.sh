# ./prove repaint [EDITS]
# From the hand's last movement to the frame that shows the kept edit, in a real browser on the demo's year of 53 weeks.
# The result goes to docs/proof/repaint.md. Run from the repository's root by ./prove.
set -euo pipefail
edits=${1:-250}
. bench/about.sh
publish
in_browser repaint "From the hand to the drawing" "the published workspace and a real Chromium without a window, 1440 x 1100; the demo's year made 53 weeks long. Every edit is made by trusted pointer and key events. Times are the page's own clock (\`performance.now\`), from the moment the browser got the release, click or key; a frame is out when the task after its animation callbacks gets its turn. Kinds of edits take turns, so that a change of the machine's mood meets all alike.

Aim: 50 ms for the 95th of the frame with the kept drawing, then 16 ms." "$edits" "- **first seen**: a ghost of the edit, or the mark itself, is in a frame.
- **acknowledged**: the answer to the posted gesture has come; it is sent after the flush to the disk. Other pages hear of an edit when this one does, so the drawing may be there before the answer.
- **page changed**: the live connection has brought the new drawing into the page.
- **frame**: that drawing is in a frame."
