// Forms and buttons that say which edit they make: data-edit holds it as JSON with gaps ("$first", "$last", "$day", "$new"),
// and a field's name is the path of the place it fills. What is typed and not yet sent outlives a reload.

/** Fills the gaps of a template. "$new" is another id each time. */
export function fill(template, gaps, newId) {
  const walk = value => {
    if (Array.isArray(value)) return value.map(walk);
    if (value && typeof value === 'object') return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, walk(part)]).filter(([, part]) => part !== undefined));
    if (value === '$new') return newId();
    if (typeof value === 'string' && value.startsWith('$') && value.slice(1) in gaps) return gaps[value.slice(1)];
    return value;
  };
  const filled = walk(template);
  return (Array.isArray(filled) ? filled : [filled]).map(edit => edit.cells?.each ? { ...edit, cells: each(edit.cells, gaps) } : edit);
}

// One entry for every chosen cell of a coach's own track: by week, or by day where the track has days.
const each = ({ each: grain, ...cell }, { weeksChosen, daysChosen }) =>
  grain === 'week' ? weeksChosen.map(week => ({ ...cell, place: `w=${week}` })) : daysChosen.map(day => ({ ...cell, place: `d=${day}` }));

/** The edits a form asks for. @param fields those that go in; what the template holds of the others stays. */
export function editsOf(form, gaps, newId, fields = form.elements) {
  const edits = [JSON.parse(form.dataset.edit)].flat();
  for (const field of fields) {
    if (!field.name || field.disabled || (field.type === 'radio' && !field.checked)) continue;
    for (const edit of edits) put(edit, field.name.split('.'), valueOf(field, form));
  }
  // Where the field that makes a thing is empty, the whole thing is meant to go, whatever its other fields say.
  for (const field of form.querySelectorAll('[data-makes]')) {
    const [thing, part] = field.name.split('.');
    for (const edit of edits) if (edit[thing]?.[part] == null) edit[thing] = null;
  }
  return fill(edits.map(prune), gaps, newId);
}

// An object of which nothing was filled in is not there: "no condition" rather than an empty one.
function prune(value) {
  // So is a list of which nothing is left.
  if (Array.isArray(value)) { const parts = value.map(prune).filter(part => part !== null); return parts.length || !value.length ? parts : null; }
  if (!value || typeof value !== 'object') return value;
  const parts = Object.entries(value).map(([key, part]) => [key, prune(part)]);
  return parts.some(([, part]) => part !== null && part !== undefined) ? Object.fromEntries(parts) : null;
}

function put(into, [name, ...rest], value) {
  // A number names a place in a list.
  if (rest.length) put(into[name] ??= /^\d+$/.test(rest[0]) ? [] : {}, rest, value);
  else if (value === undefined) delete into[name];
  else into[name] = value;
}

// An empty field says "nothing here", so that what was there can be taken away; one that says "default" leaves it open.
function valueOf(field, form) {
  if (field.dataset.as === 'tick') return field.checked ? field.value : null;
  if (field.type === 'checkbox') return field.checked;
  if (field.multiple) return field.selectedOptions.length || 'empty' in field.dataset ? [...field.selectedOptions].map(option => option.value) : null;
  const text = field.value.trim();
  if (text === '') return field.dataset.as === 'default' ? undefined : null;
  switch (field.dataset.as) {
    case 'number': return Number(text.replace(',', '.'));
    case 'decimal': return text.replace(',', '.');
    case 'load': return Math.round(Number(text.replace(',', '.')) * Number(form.closest('[data-reference]').dataset.reference) / 100);
    case 'lines': return text.split('\n').map(line => line.trim()).filter(line => line);
    default: return text;
  }
}

const draftKey = form => `seasonwright.draft.${form.dataset.draft}`;

export function keepDraft(form) {
  if (!form?.dataset.draft) return;
  const typed = [...form.elements].filter(field => field.name && !['hidden', 'file'].includes(field.type) && (field.type !== 'radio' || field.checked)).map(field => [field.name, field.type === 'checkbox' ? field.checked : field.value]);
  try { sessionStorage.setItem(draftKey(form), JSON.stringify(typed)); } catch { /* More than a tab may keep: it stays on the page alone. */ }
}

export function dropDraft(draft) { if (draft) sessionStorage.removeItem(`seasonwright.draft.${draft}`); }

/** Puts back what was typed into forms that have just appeared. */
export function restoreDrafts(within) {
  for (const form of within.querySelectorAll('form[data-draft]')) {
    if (form.dataset.restored) continue;
    form.dataset.restored = 'yes';
    for (const [name, value] of JSON.parse(sessionStorage.getItem(draftKey(form)) ?? '[]')) {
      const field = form.elements.namedItem(name);
      if (field?.type === 'checkbox') field.checked = value;
      else if (field) field.value = value;
    }
  }
}
