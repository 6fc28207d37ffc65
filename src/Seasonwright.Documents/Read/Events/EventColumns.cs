using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Events;

/// <summary>What a column of an event list holds.</summary>
internal enum EventColumn
{
    Title,
    Kind,
    When,
    Start,
    End,
    For,
    Remark,
    Place,
    Share,
    Part,
    Leg,
    FromPlace,
    ToPlace,
    Departs,
    Arrives,
    Number,
    Weekday,
}

/// <summary>Which column holds what: by its heading, or by what stands in it where there are no headings.</summary>
/// <param name="Heading">Index of the row of headings; null when there is none.</param>
internal sealed record EventColumns(IReadOnlyDictionary<EventColumn, int> Places, int? Heading)
{
    private static readonly (EventColumn Column, string[] Words)[] Headings =
    [
        (EventColumn.Title, ["what", "was", "event", "title", "name", "anlass", "ereignis", "bezeichnung", "titel", "description", "beschreibung", "occasion", "veranstaltung", "activity", "betreff", "subject", "summary", "hva", "hvad", "vad", "quoi", "que", "wat", "co", "descrizione", "descripcion", "omschrijving", "opis", "libelle", "intitule", "evenement", "evento", "hendelse", "begivenhed", "handelse", "wydarzenie", "titre", "titulo", "titolo", "aktivitet", "gebeurtenis"]),
        (EventColumn.Kind, ["type", "kind", "art", "category", "kategorie", "typ", "tipo", "soort", "kategori", "categorie", "categoria", "rodzaj", "genre"]),
        (EventColumn.When, ["when", "wann", "date", "dates", "datum", "termin", "zeitraum", "period", "tage", "days", "span", "nar", "hvornar", "quand", "cuando", "quando", "wanneer", "kiedy", "periodo", "periode", "dato", "datoer", "fecha", "fechas", "data", "date(s)"]),
        (EventColumn.Start, ["start", "starts", "start date", "from", "von", "beginn", "begin", "begins", "first day", "ab", "erster tag", "anfang", "date from", "from date", "starting", "fra", "fra dato", "debut", "du", "desde", "inicio", "inizio", "dal", "da", "startdato", "startdatum", "van", "vanaf", "fran", "od", "premier jour", "date de debut", "fecha inicio", "data inizio"]),
        (EventColumn.End, ["end", "ends", "end date", "to", "bis", "ende", "until", "till", "last day", "letzter tag", "date to", "to date", "through", "finish", "til", "til dato", "fin", "au", "hasta", "al", "fine", "slut", "sluttdato", "slutdato", "einddatum", "enddatum", "tot", "t/m", "eind", "do", "koniec", "dernier jour", "date de fin", "fecha fin", "data fine"]),
        (EventColumn.For, ["who", "wer", "for", "fur", "whom", "for whom", "group", "gruppe", "players", "team", "betrifft", "fur wen", "affects", "spieler", "participants", "squad", "gjelder", "galder", "gaelder", "hvem", "vem", "qui", "quien", "quienes", "chi", "pour", "para", "per", "per chi", "groupe", "groep", "grupo", "gruppo", "voor", "voor wie", "dla", "dla kogo", "concerne"]),
        (EventColumn.Remark, ["remark", "remarks", "note", "notes", "comment", "comments", "bemerkung", "bemerkungen", "hinweis", "hinweise", "info", "details", "kommentar", "anmerkung", "notiz", "notizen", "merknad", "merknader", "bemaerkning", "bemaerkninger", "remarque", "remarques", "observaciones", "observations", "notas", "opmerking", "opmerkingen", "anmarkning", "anmarkningar", "kommentarer", "uwagi", "osservazioni"]),
        (EventColumn.Place, ["place", "where", "ort", "wo", "venue", "location", "sted", "plats", "lieu", "lugar", "luogo", "plaats", "miejsce"]),
        (EventColumn.Share, ["training", "training %", "% training", "training possible", "training possible (%)", "share", "anteil", "training moglich", "training moglich (%)", "training (%)", "load %"]),
        (EventColumn.Part, ["time", "part", "zeit", "tageszeit", "uhrzeit", "hours", "part of day", "times", "am/pm", "tid", "heure", "horaire", "hora", "ora", "orario", "tijd", "klokken", "godzina"]),
        (EventColumn.Leg, ["leg", "etappe", "stage", "abschnitt"]),
        (EventColumn.FromPlace, ["from place", "leaves from", "abfahrtsort", "von ort", "departure place", "origin"]),
        (EventColumn.ToPlace, ["to place", "destination", "ziel", "zielort", "nach", "nach ort"]),
        (EventColumn.Departs, ["dep", "dep.", "departs", "departure", "leave", "leaves", "abfahrt", "abflug", "from time", "start time"]),
        (EventColumn.Arrives, ["arr", "arr.", "arrives", "arrival", "ankunft", "to time", "end time"]),
        (EventColumn.Number, ["no", "no.", "nr", "nr.", "#", "id", "number", "nummer"]),
        (EventColumn.Weekday, ["day", "tag", "weekday", "wochentag", "jour", "dia", "giorno", "dag", "ukedag", "ugedag", "veckodag", "dzien"]),
    ];

    private const int LongestHeading = 40;

    public int? this[EventColumn column] => Places.TryGetValue(column, out var place) ? place : null;

    public bool HasDays => this[EventColumn.When] is not null || this[EventColumn.Start] is not null;

    public string Cell(CellRow row, EventColumn column) => this[column] is { } place ? row[place] : "";

    /// <summary>The columns of a table, or null where neither headings nor cells tell where the days stand.</summary>
    public static EventColumns? Of(CellTable table)
    {
        for (var i = 0; i < Math.Min(table.Rows.Count, 12); i++)
            if (OfHeadings(table, i) is { } found) return found;
        return OfCells(table);
    }

    private static EventColumns? OfHeadings(CellTable table, int index)
    {
        var row = table.Rows[index];
        var places = new Dictionary<EventColumn, int>();
        foreach (var (column, cell) in row.Filled)
            if (Headed(cell) is { } role) places.TryAdd(role, column);
        if (places.Count < 2 || places.Count * 2 < row.Filled.Count() || row.Filled.Any(cell => Dated(cell.Cell))) return null;

        // "from" and "to" may be days, places or times: their cells tell.
        var below = table.Rows.Skip(index + 1).ToList();
        var froms = row.Filled.Where(cell => Headed(cell.Cell) == EventColumn.Start).Select(cell => cell.Column).ToList();
        var tos = row.Filled.Where(cell => Headed(cell.Cell) == EventColumn.End).Select(cell => cell.Column).ToList();
        Told(froms, EventColumn.Start, EventColumn.FromPlace, EventColumn.Departs);
        Told(tos, EventColumn.End, EventColumn.ToPlace, EventColumn.Arrives);
        if (!places.ContainsKey(EventColumn.Title) && Loose() is { } title) places[EventColumn.Title] = title;
        if (!places.ContainsKey(EventColumn.Title) && places.Remove(EventColumn.Kind, out var kind)) places[EventColumn.Title] = kind;
        var columns = new EventColumns(places, index);
        return columns.HasDays && columns[EventColumn.Title] is not null ? columns : null;

        void Told(List<int> candidates, EventColumn days, EventColumn place, EventColumn time)
        {
            places.Remove(days);
            foreach (var column in candidates)
            {
                var cells = below.Select(r => r[column]).Where(cell => cell.Length > 0).ToList();
                var role = cells.Count == 0 || cells.Count(Dated) * 2 >= cells.Count ? days : cells.Count(IsTime) * 2 >= cells.Count ? time : place;
                places.TryAdd(role, column);
            }
        }

        // A column without a known heading that holds texts.
        int? Loose() => Enumerable.Range(0, row.Cells.Count).Where(column => !places.ContainsValue(column))
            .Where(column => below.Count(r => r[column].Length > 0 && !Dated(r[column])) * 2 > below.Count(r => !r.IsBlank)).Select(column => (int?)column).FirstOrDefault();
    }

    /// <summary>A heading that names events.</summary>
    public static bool IsTitle(string heading) => Headed(heading) is EventColumn.Title;

    /// <summary>A heading that says when something is.</summary>
    public static bool SaysDays(string heading) => Headed(heading) is EventColumn.When or EventColumn.Start or EventColumn.End;

    private static EventColumn? Headed(string cell)
    {
        var folded = SpanToken.Fold(cell).Trim().TrimEnd(':', '?');
        foreach (var (column, words) in Headings)
            if (words.Contains(folded)) return column;
        return null;
    }

    private static EventColumns? OfCells(CellTable table)
    {
        var rows = table.Rows.Where(row => row.Filled.Count() > 1).ToList();
        // Words alone above the first days are headings, in whatever language.
        var heading = rows.Count > 2 && !rows[0].Filled.Any(c => Dated(c.Cell) || c.Cell.Any(char.IsAsciiDigit)) && rows[0].Filled.All(c => c.Cell.Length <= LongestHeading) && rows[1].Filled.Any(c => Dated(c.Cell)) ? rows[0] : null;
        if (heading is not null) rows.RemoveAt(0);
        if (rows.Count == 0) return null;
        var width = rows.Max(row => row.Cells.Count);
        var dated = Enumerable.Range(0, width).Where(column => rows.Count(row => Dated(row[column])) * 2 > rows.Count).ToList();
        if (dated.Count == 0) return null;
        var places = new Dictionary<EventColumn, int>();
        // Last days may be written only where they are other than the first.
        var ends = Enumerable.Range(dated[0] + 1, width - dated[0] - 1).Where(column => rows.Exists(row => IsDay(row[column])) && rows.TrueForAll(row => row[column].Length == 0 || IsDay(row[column]))).ToList();
        if (ends.Count > 0 && rows.Count(row => IsDay(row[dated[0]])) * 2 > rows.Count)
            (places[EventColumn.Start], places[EventColumn.End]) = (dated[0], ends[0]);
        else places[EventColumn.When] = dated[0];
        var texts = Enumerable.Range(0, width).Except(dated).Except(places.Values).Where(column => rows.Any(row => row[column].Any(char.IsLetter)))
            .OrderByDescending(column => rows.Select(row => row[column]).Where(cell => cell.Any(char.IsLetter)).Distinct(StringComparer.Ordinal).Count() * 1000 - column).ToList();
        if (texts.Count == 0) return null;
        places[EventColumn.Title] = texts[0];
        return new EventColumns(places, heading is null ? null : table.Rows.ToList().IndexOf(heading));
    }

    private static bool IsDay(string cell) => new SpanFinder(cell, true).Spans() is [{ Form: DaysForm { Last: null } } day] && day.At == 0 && day.End == cell.Length;

    private static bool Dated(string cell) => cell.Length > 0 && new SpanFinder(cell, true).Spans().Count > 0;

    private static bool IsTime(string cell) => Times.TimeText.Read(cell).Sense is Times.TimeSense.Known or Times.TimeSense.Midnight or Times.TimeSense.Doubtful or Times.TimeSense.Unknown;
}
