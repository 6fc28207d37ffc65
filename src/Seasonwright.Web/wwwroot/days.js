// Days as ISO texts, and counting with them.

const midnight = day => new Date(day + 'T00:00:00Z');

export const addDays = (day, count) => { const date = midnight(day); date.setUTCDate(date.getUTCDate() + count); return date.toISOString().slice(0, 10); };

export const daysFrom = (a, b) => Math.round((Date.parse(b) - Date.parse(a)) / 86400000);

/** Every day of a week or span, both ends inside. */
export const daysOf = ({ first, last }) => Array.from({ length: daysFrom(first, last) + 1 }, (_, i) => addDays(first, i));

export const spoken = day => midnight(day).toLocaleDateString(document.documentElement.lang, { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' });
