// Cells to and from a spreadsheet: what is copied leaves as rows of tabs, what is pasted comes back from the page as edits of
// one gesture, or as what does not fit.

// What a cell holds is the innermost value of its entry.
const held = entry => { while (entry !== null && typeof entry === 'object') entry = Object.values(entry)[0]; return entry ?? ''; };
const quoted = text => /["\t\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

/** Listens for the clipboard while the chart has a cursor. @param hand the chart under the hand (year.js). */
export function shareCells(hand) {
  // A run of a track is a row; of the weeks themselves it is a block of every track that can be filled, with names before it.
  const copied = cursor => {
    const entries = hand.data('entries'), chosen = hand.run();
    const row = (track, places) => places.map(place => quoted(String(held(entries[track]?.[place])))).join('\t');
    if (entries[cursor.track]) return row(cursor.track, chosen.map(cell => cell.day ?? cell.week));
    if (!['weeks', 'months', 'dates'].includes(cursor.track)) return null;
    const [first, last] = hand.weeksChosen(), weeks = hand.data('weeks').slice(first, last + 1), numbers = weeks.map((_, index) => first + index);
    const tracks = hand.tracks().filter(track => entries[track.id] && !hand.cells.all.find(cell => cell.track === track.id)?.day);
    return [['', ...weeks.map(week => week.first)].join('\t'), ...tracks.map(track => `${quoted(track.name)}\t${row(track.id, numbers)}`)].join('\n');
  };

  document.addEventListener('copy', event => {
    const cursor = hand.cursor(), text = cursor && !event.defaultPrevented ? copied(cursor) : null;
    if (cursor && text === null && !event.defaultPrevented) hand.refuse(hand.words.notCopied);
    if (text === null) return;
    event.preventDefault();
    event.clipboardData.setData('text/plain', text);
    hand.say();
  });
  document.addEventListener('paste', async event => {
    if (!hand.cursor() || event.defaultPrevented) return;
    event.preventDefault();
    const { edits, problem } = await hand.read(event.clipboardData.getData('text/plain'), hand.run()[0]);
    if (problem) hand.refuse(problem); else hand.send(edits);
  });
}
