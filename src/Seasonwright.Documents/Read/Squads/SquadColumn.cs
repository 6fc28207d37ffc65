using System.Text.RegularExpressions;
using Seasonwright.Documents.Read.Spans;

namespace Seasonwright.Documents.Read.Squads;

/// <summary>What a column of a squad list holds.</summary>
internal enum SquadColumn
{
    Name,
    Family,
    Given,
    Number,
    Position,
    Born,
    Age,
    Height,
    Mass,
    Group,
    Remark,
    Lift,
    Health,
}

/// <summary>What headings are called, in the languages of <see cref="Dates.CalendarWords"/>. From memory.</summary>
internal static partial class SquadHeadings
{
    private static readonly (SquadColumn Column, string[] Words)[] Headings =
    [
        (SquadColumn.Family, Words("nachname|familienname|zuname|surname|last name|lastname|family name|family|last|nom de famille|apellido|apellidos|cognome|achternaam|familienaam|etternavn|efternavn|efternamn|sobrenome|apelido|nazwisko|slektsnavn")),
        (SquadColumn.Given, Words("vorname|vornamen|rufname|first name|firstname|first names|given name|given names|given|first|forename|christian name|prenom|nombres|voornaam|fornavn|fornamn|primeiro nome|imie|preferred name")),
        (SquadColumn.Name, Words("name|player|players|player name|spieler|spielerin|spielerinnen|athlete|athlet|athletin|athletes|full name|names|nom|joueur|joueuse|nombre|jugador|jugadora|nome|giocatore|giocatrice|naam|speler|speelster|navn|namn|spiller|spelare|jogador|jogadora|zawodnik|zawodniczka|student|pupil|schuler|schulerin|atleta|sportler|sportlerin|squad member|member|"
            + "name vorname|vorname name|nachname vorname|vorname nachname|last first|first last|last name first name|first name last name|surname first name|name family given|nom prenom|nom et prenom|prenom nom|prenom et nom|apellidos y nombre|apellidos nombre|nombre y apellidos|nombre y apellido|imie i nazwisko|nazwisko i imie|cognome nome|cognome e nome|nome e cognome|nome cognome|family name given name|naam voornaam|voornaam achternaam|etternavn fornavn|fornavn etternavn")),
        (SquadColumn.Number, Words("no|nr|nummer|number|num|#|shirt|shirt no|shirt number|shirt nr|jersey|jersey no|jersey number|jersey #|trikot|trikotnr|trikot nr|trikotnummer|ruckennummer|ruckennr|squad no|squad number|kit no|kit number|bib|n°|nº|numero|dossard|maillot|dorsal|camiseta|maglia|rugnummer|draktnummer|draktnr|drakt|troje|trojnummer|trojnr|trojenr|trojenummer|numer|koszulka|camisola|vest")),
        (SquadColumn.Position, Words("pos|position|positions|posten|spielposition|stammposition|role|rolle|poste|puesto|posicion|demarcacion|ruolo|positie|plass|posisjon|plads|posicao|pozycja|playing position|main position|disziplin|discipline")),
        (SquadColumn.Born, Words("born|dob|d o b|date of birth|birth date|birthdate|birthday|birth|geb|geburtsdatum|geburtstag|geb datum|geb-datum|gebdatum|geboren|geb am|geboren am|jahrgang|jg|year of birth|yob|birth year|ne|nee|ne le|nee le|date de naissance|naissance|nacimiento|fecha de nacimiento|fecha nac|f nac|nascita|data di nascita|nato|nata|nato il|nata il|geboortedatum|geb dat|fodt|fodselsdato|fodelsedatum|fodd|fodselsdag|data de nascimento|nascimento|data urodzenia|ur|urodzona|urodzony|rok urodzenia|nasc")),
        (SquadColumn.Age, Words("age|alter|alder|edad|eta|leeftijd|idade|wiek|age yrs|age years")),
        (SquadColumn.Height, Words("ht|height|grosse|groesse|korpergrosse|taille|altura|estatura|altezza|statura|lengte|hoyde|hojde|langd|wzrost|stature")),
        (SquadColumn.Mass, Words("wt|weight|weights|bodyweight|body weight|bodymass|body mass|mass|bw|bm|gewicht|korpergewicht|korpermasse|poids|peso|peso corporal|massa|lichaamsgewicht|vekt|kroppsvekt|vaegt|vikt|kroppsvikt|waga|masa|masa ciala|current weight")),
        (SquadColumn.Group, Words("group|grp|gruppe|kraftgruppe|training group|trainingsgruppe|groupe|grupo|gruppo|groep|grupp|grupa|unit|squad|team|mannschaft|kader|pod|lifting group|weights group|platform")),
        (SquadColumn.Remark, Words("remark|remarks|note|notes|comment|comments|bemerkung|bemerkungen|hinweis|hinweise|info|details|kommentar|kommentare|anmerkung|anmerkungen|notiz|notizen|merknad|merknader|bemaerkning|bemaerkninger|remarque|remarques|observaciones|observacoes|observations|notas|opmerking|opmerkingen|anmarkning|anmarkningar|kommentarer|uwagi|osservazioni|note varie|sonstiges|other|status|availability|zustand|statut|estado|stato")),
    ];

    /// <summary>A heading's column; <see cref="SquadColumn.Lift"/> for a lift's; null for anything else.</summary>
    public static SquadColumn? Of(string heading)
    {
        var plain = Plain(heading);
        if (plain.Length == 0) return MassText.UnitsIn(heading).Count == 1 && RepsIn(heading) is null ? SquadColumn.Mass : null;
        foreach (var name in plain.Split('/', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Prepend(plain))
            foreach (var (column, words) in Headings)
                if (words.Contains(name)) return column;
        if (Exercises.Of(plain) is not null) return SquadColumn.Lift;
        return HealthWords.BesidePerson(heading) ? SquadColumn.Health : null;
    }

    /// <summary>A heading that names both names in an order: whether the family name stands first. Null where it says no order.</summary>
    public static bool? SaysFamilyFirst(string heading) => Plain(heading).Split([' ', '/'], StringSplitOptions.RemoveEmptyEntries) switch
    {
        ["nachname" or "last" or "surname" or "family" or "nazwisko" or "cognome" or "apellidos" or "etternavn" or "achternaam", _, ..] and not ["last" or "family", "name"] => true,
        ["name" or "naam" or "nom", "vorname" or "voornaam" or "prenom" or "et" or "family", ..] => true,
        ["vorname" or "first" or "prenom" or "imie" or "fornavn" or "voornaam" or "given", _, ..] and not ["first" or "given", "name"] => false,
        ["nombre", "y", ..] or ["nome", "e" or "cognome", ..] => false,
        _ => null,
    };

    /// <summary>"1RM": 1; "3RM squat": 3; null where a heading says no repetitions.</summary>
    public static int? RepsIn(string heading) => Repetitions().Match(heading) is { Success: true } match ? match.Groups["n"].Value is { Length: > 0 } n ? int.Parse(n, System.Globalization.CultureInfo.InvariantCulture) : 1 : null;

    /// <summary>Lower case without accents, brackets, points, units and "1RM": what the heading is of.</summary>
    public static string Plain(string heading)
    {
        var plain = Repetitions().Replace(Brackets().Replace(SpanToken.Fold(heading), " "), " ");
        plain = UnitWords().Replace(plain, " ").Replace('.', ' ').Replace(',', ' ');
        return Spelling.Tidy(plain).Trim(' ', ':', '*', '_', '-', '?');
    }

    private static string[] Words(string list) => list.Split('|');

    [GeneratedRegex(@"(?<!\p{L})(?:(?<n>[0-9]{1,2}) ?-?rm|best|pr|pb|max\.?|maximum|est\.?)(?!\p{L})", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Repetitions();

    [GeneratedRegex(@"[(\[][^)\]]*[)\]]?", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Brackets();

    [GeneratedRegex(@"(?<!\p{L})(?:in )?(?:kgs?|lbs?|cm)(?!\p{L})", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex UnitWords();
}
