using Seasonwright.Core;
using Seasonwright.Documents.Read;
using Seasonwright.Documents.Read.Squads;
using Seasonwright.Documents.Tests.Read.Workbooks;

namespace Seasonwright.Documents.Tests.Read;

/// <summary>Squad lists of our own in other shapes than the samples. All people are invented. What is expected is what a careful human reads.</summary>
public class SquadOwnTests
{
    [Fact]
    public void One_name_column_given_name_first_is_asked_once()
    {
        var list = Read("""
            Name,No,Position,DOB,Weight (kg),1RM squat (kg),Bench 3RM (kg)
            Ysolde Varnum,1,goalkeeper,1999-03-14,71.5,110,60
            Maren Thistlewick,4,left back,1998-07-30,74,x,57.5
            """);
        Assert.Equal("Varnum, Ysolde|Thistlewick, Maren", Names(list));
        Assert.Equal("71.5 kg|74 kg", string.Join('|', list.Rows.Select(row => row.Mass)));
        Assert.Equal("back squat 110 kg; bench press 60 kg x 3|bench press 57.5 kg x 3", Lifts(list));
        Assert.True(list.Rows[0].Lifts[0].IsMax);
        Assert.Equal("Q-order", Asked(list));
        Assert.Equal("Varnum Ysolde", Read("Name,No\nYsolde Varnum,1\nMaren Thistlewick,4\nTamsin Garrick,7", ("Q-order", "family-first")).Rows[0].Name);
    }

    [Theory]
    [InlineData("T. Thackerbury", "Thackerbury, T.")]
    [InlineData("Thackerbury T.", "Thackerbury, T.")]
    [InlineData("THACKERBURY Oswin", "THACKERBURY, Oswin")]
    [InlineData("Oswin THACKERBURY", "THACKERBURY, Oswin")]
    [InlineData("van der Meulbroek, Jorinde (c)", "van der Meulbroek, Jorinde")]
    [InlineData("Jorinde van der Meulbroek", "van der Meulbroek, Jorinde")]
    public void Names_are_cut_where_they_say_so_themselves(string name, string cut) => Assert.Equal(cut, Names(Read($"Player;No;Pos\n{name};7;RL")));

    [Theory]
    [InlineData("Name;Vorname;Nr", "Varnum;Ysolde;1")]
    [InlineData("Nom;Prénom;Poste", "Varnum;Ysolde;GB")]
    [InlineData("Apellidos;Nombre;Dorsal", "Varnum;Ysolde;1")]
    [InlineData("Cognome;Nome;Ruolo", "Varnum;Ysolde;P")]
    [InlineData("Etternavn;Fornavn;Draktnr", "Varnum;Ysolde;1")]
    [InlineData("Efternamn;Förnamn;Position", "Varnum;Ysolde;MV")]
    [InlineData("Achternaam;Voornaam;Rugnummer", "Varnum;Ysolde;1")]
    [InlineData("Nazwisko;Imię;Pozycja", "Varnum;Ysolde;BR")]
    [InlineData("Apelido;Primeiro nome;Camisola", "Varnum;Ysolde;1")]
    [InlineData("Nachname, Vorname;Trikot;Jahrgang", "Varnum Ysolde;1;")]
    [InlineData("SURNAME;First Name;Jersey #", "Varnum;Ysolde;1")]
    public void Headings_are_known_in_many_languages(string headings, string row) => Assert.Equal("Varnum, Ysolde", Names(Read($"{headings}\n{row}")));

    [Fact]
    public void Headings_on_two_rows_and_joined_cells_of_a_workbook()
    {
        var book = new MadeWorkbook().Sheet("Notes", "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>bring shoes</t></is></c></row>")
            .Sheet("Squad", $"{Row(1, "Harbour Vale", "", "", "", "", "")}{Row(2, "Name", "No", "Pos", "1RM (lb)", "", "Remarks")}{Row(3, "", "", "", "Squat", "Clean", "")}{Row(4, "Varnum, Ysolde", "1", "GK", "225", "135x3", "captain")}{Row(5, "Okkonrad, Brynja", "12", "LW", "205", "", "")}", "<mergeCells count=\"1\"><mergeCell ref=\"D2:E2\"/></mergeCells>");
        var list = SquadReader.Read("squad.xlsx", book.Bytes(), Options());
        Assert.Equal("Varnum, Ysolde|Okkonrad, Brynja", Names(list));
        Assert.Equal("back squat 225 lb; clean 135 lb x 3|back squat 205 lb", Lifts(list));
        Assert.True(list.Rows[0].Lifts[0].IsMax);
        Assert.Equal(("", "Harbour Vale", "captain"), (Asked(list), list.Team, list.Rows[0].Remark));
    }

    [Fact]
    public void Units_come_from_headings_cells_and_lines_above_or_are_asked()
    {
        Assert.Equal("Q-order,Q-unit", Asked(Read("Name,No,Weight\nYsolde Varnum,1,71\nBrynja Okkonrad,2,74")));
        var pounds = Read("Name,No,Weight\n\"Varnum, Ysolde\",1,152\n\"Okkonrad, Brynja\",2,168");
        Assert.All(pounds.Rows, row => Assert.Null(row.Mass));
        Assert.Equal("lb", Assert.Single(pounds.Questions).Offered);
        Assert.Equal("152 lb", $"{Read("Name,No,Weight\n\"Varnum, Ysolde\",1,152\n\"Okkonrad, Brynja\",2,168", ("Q-unit:mass", "lb")).Rows[0].Mass}");
        Assert.Equal("152 lb", $"{Read("weights in lb\nName,No,Weight\n\"Varnum, Ysolde\",1,152").Rows[0].Mass}");
        Assert.Equal("71.5 kg", $"{Read("Name;Nr;Gewicht\nVarnum, Ysolde;1;71,5\nOkkonrad, Brynja;2;74 kg").Rows[0].Mass}");
    }

    [Theory]
    [InlineData("3/14/2006", "4/7/2007", "2007-04-07", "")]
    [InlineData("14/3/2006", "4/7/2007", "2007-07-04", "")]
    [InlineData("4/3/2006", "4/7/2007", "", "Q-born")]
    [InlineData("14/3/2006", "3/14/2006", "2006-03-14", "")]
    [InlineData("1.2.99", "5.6.11", "2011-06-05", "")]
    [InlineData("2006-03-14", "31.4.2002", "", "Q-born")]
    [InlineData("2006-03-14", "2003", "", "Q-born")]
    [InlineData("2006-03-14", "2026-01-01", "", "Q-born")]
    [InlineData("2006-03-14", "38912", "2006-07-14", "Q-serial")]
    public void Days_of_birth_are_decided_by_the_whole_column(string one, string other, string expected, string asks)
    {
        var list = Read($"Name;Born\nVarnum, Ysolde;{one}\nOkkonrad, Brynja;{other}");
        Assert.Equal(expected, $"{list.Rows[1].Born:yyyy-MM-dd}");
        Assert.Equal(asks, Asked(list));
    }

    [Fact]
    public void Years_of_birth_alone_are_asked_once_and_numbers_may_stand_in_brackets()
    {
        var years = Read("Name;Jg.\nVarnum, Ysolde;2001\nOkkonrad, Brynja;2003\nVane, Maren;1999");
        Assert.Equal("2 3 4", string.Join(' ', Assert.Single(years.Questions).Lines));
        Assert.Equal("", Asked(Read("Name;Jg.\nVarnum, Ysolde;2001\nOkkonrad, Brynja;2003", ("Q-born", "empty"))));
        Assert.Equal("1 12 7", string.Join(' ', Read("Kader\nTor: Pia Lindgruber (1), Vera Astheimer (12)\nKreis: Mila Osterwald (7, Kapitänin)").Rows.Select(row => row.Number)));
    }

    [Fact]
    public void Answers_settle_what_was_asked()
    {
        const string List = "No;Name;Pos;Born;Weight (kg);Squat (kg)\n7;Dalgaard, Iris;KM/RL;7/8/99;68;110\n7;Vane, Maren;LA;1.2.2003;740;70x8\n?;Trial, Player;;;;";
        Assert.Equal("Q-born,Q-lifts,Q-mass,Q-number,Q-pos,Q-trial", Asked(Read(List)));
        var list = Read(List, ("Q-born", "1999-08-07"), ("Q-lifts", "max"), ("Q-mass", "74"), ("Q-number", "none"), ("Q-pos", "RL"), ("Q-trial", "no"));
        Assert.Equal("", Asked(list));
        Assert.Equal("Dalgaard, Iris|Vane, Maren", Names(list));
        var (iris, maren) = (list.Rows[0], list.Rows[1]);
        Assert.Equal((new DateOnly(1999, 8, 7), "RL/KM", true, (string?)null), (iris.Born, string.Join('/', iris.Positions), iris.Lifts[0].IsMax, iris.Number));
        Assert.Equal(("74 kg", (bool?)null), ($"{maren.Mass}", maren.Lifts[0].IsMax));
        Assert.Contains(list.Skipped, skipped => skipped is { Line: 4, Kind: "squad-left-out" });
        Assert.Equal(6, list.Answered.Count);
    }

    [Fact]
    public void The_same_row_again_is_one_person_and_one_name_with_other_fields_is_asked()
    {
        var list = Read("Name;No;Born\nVane, Maren;4;1998-07-30\nVane, Maren;4;1998-07-30\nVane, Maren;17;2006-01-18");
        Assert.Equal("2 4", string.Join(' ', list.Rows.Select(row => row.Line)));
        Assert.Equal("Q-same", Asked(list));
        Assert.Contains(list.Skipped, skipped => skipped is { Line: 3, Kind: "squad-repeat" });
        var one = Read("Name;No;Born\nVane, Maren;4;\nVane, Maren;;2006-01-18", ("Q-same", "one"));
        Assert.Equal(("4", new DateOnly(2006, 1, 18)), (Assert.Single(one.Rows).Number, one.Rows[0].Born));
    }

    [Fact]
    public void Sections_groups_staff_and_totals_are_no_people()
    {
        var list = Read("Name,No,Age,Group\nGoalkeepers\n\"Varnum, Ysolde\",1,16,A\nBacks:\n\"Vane, Maren\",0,17,\nCoaches\n\"Doe, Anders\",,,\nTotal,2,,\n");
        Assert.Equal("Varnum, Ysolde|Vane, Maren", Names(list));
        Assert.Equal(("A", "Backs", "0"), (list.Rows[0].Group, list.Rows[1].Group, list.Rows[1].Number));
        Assert.All(list.Rows, row => Assert.True(row.IsMinorOn(Today)));
        Assert.Equal("squad-section,squad-section,squad-section,squad-staff,squad-totals", string.Join(',', list.Skipped.Where(skipped => skipped.Line is 2 or 4 or 6 or 7 or 8).Select(skipped => skipped.Kind)));
    }

    [Fact]
    public void Prose_with_dashes_labels_and_bullets()
    {
        var list = Read("""
            Harbour Vale squad 2026/27
            Goalkeepers: 1 Y. Varnum, 12 B. Okkonrad
            - 4 Maren Thistlewick – left back – 74 kg – 183 cm – squat 100x5, bench press 60 kg
            - 7 I. Dalgaard – pivot – born 7.8.1999 – 11 st 4 lb
            * 9 Tamsin Garrick LW, 17 years
            Trialists: Hanka Zielk
            Coach: Anders Doe
            """);
        Assert.Equal("Harbour Vale", list.Team);
        Assert.Equal("Varnum, Y.|Okkonrad, B.|Thistlewick, Maren|Dalgaard, I.|Garrick, Tamsin|Zielk, Hanka", Names(list));
        Assert.Equal("1 12 4 7 9 ", string.Join(' ', list.Rows.Select(row => row.Number)));
        Assert.Equal("Goalkeepers,Goalkeepers,,,,", string.Join(',', list.Rows.Select(row => row.Group)));
        Assert.Equal("left back|pivot|LW", string.Join('|', list.Rows.SelectMany(row => row.Positions)));
        Assert.Equal(("74 kg", "183 cm", "11 st 4 lb", new DateOnly(1999, 8, 7), 17), ($"{list.Rows[2].Mass}", list.Rows[2].Height, $"{list.Rows[3].Mass}", list.Rows[3].Born, list.Rows[4].Age));
        Assert.Equal("back squat 100 kg x 5; bench press 60 kg", Lifts(list).Trim('|'));
        Assert.Equal((true, "Q-lifts,Q-trial,Q-unit"), (list.Rows[5].Waits, Asked(list)));
        Assert.Equal(5, list.Taken.Count());
    }

    [Theory]
    [InlineData("7 Runa Halvorsen (left back) 72 kg squat 100 x 3")]
    [InlineData("7 Runa Halvorsen left back 72 kg squat 100 x 3")]
    [InlineData("7 Runa Halvorsen, left back, squat 100 x 3 72 kg")]
    [InlineData("7 Runa Halvorsen – left back 72kg, squat 100x3")]
    [InlineData("7 Runa Halvorsen squat 100 x 3 left back, 72 kg")]
    public void What_is_said_with_only_spaces_between_is_parted(string line)
    {
        var row = Assert.Single(Read($"{line}\n").Rows);
        Assert.Equal(("Runa Halvorsen", "7", "left back", "72 kg", 100m, 3, null),
            (row.Name, row.Number, string.Join('/', row.Positions), $"{row.Mass}", row.Lifts[0].Weight.Amount, row.Lifts[0].Reps, row.Remark));
    }

    [Theory]
    [InlineData("7 Runa Halvorsen, 72 kg likes mornings", "72 kg likes mornings")]
    [InlineData("7 Runa Halvorsen, captain since 2020", "captain since 2020")]
    [InlineData("7 Runa Halvorsen, left back of the year 2019", "left back of the year 2019")]
    public void A_sentence_stays_one_remark(string line, string remark) => Assert.Equal(remark, Assert.Single(Read($"{line}\n").Rows).Remark);

    [Theory]
    [InlineData("Name;No;Notes\nVane, Maren;4;{0}")]
    [InlineData("Name;No;Pos\nVane, Maren ({0});4;RL")]
    [InlineData("Name;No;Weight (kg)\nVane, Maren;4;{0}")]
    [InlineData("Name;No;Squat (kg)\nVane, Maren;4;{0}")]
    [InlineData("Name;No;Born\nVane, Maren;4;{0}")]
    [InlineData("Name;No;Medical\nVane, Maren;4;{0}")]
    [InlineData("Name;No;Pos;Group\nVane, Maren;4;RL;{0}")]
    [InlineData("1. Ysolde Varnum, pivot\n4. Maren Vane, back, {0}")]
    [InlineData("1. Ysolde Varnum, pivot\n4. Maren Vane ({0}), back")]
    [InlineData("1. Ysolde Varnum, pivot\n4. Maren Vane, back\nInjured: Iris Dalgaard ({0})")]
    public void Health_never_comes_out_wherever_it_stands(string shape)
    {
        foreach (var detail in new[] { "torn ACL", "knee surgery 12.6.", "Kreuzband links", "asthma", "out until March", "genou gauche", "lesión de rodilla", "skadet kne", "saw Dr. Who", "concussion" })
        {
            var list = Read(shape.Replace("{0}", detail, StringComparison.Ordinal));
            Assert.NotEmpty(list.Rows);
            Assert.NotEmpty(list.HeldBack);
            Assert.Contains("Q-medical", Asked(list), StringComparison.Ordinal);
            Assert.DoesNotContain(detail, System.Text.Json.JsonSerializer.Serialize(list, SquadFaultTests.Readable), StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void Cells_like_formulas_and_errors_are_told_and_never_taken()
    {
        var list = Read("Name;No;Weight (kg);Squat (kg)\nVane, Maren;4;#DIV/0!;=A1\nGarrick, Tamsin;5;abc;x");
        Assert.All(list.Rows, row => Assert.True(row is { Mass: null, Lifts.Count: 0 }));
        Assert.Equal("squad-error,squad-error,squad-cell", string.Join(',', list.Skipped.Where(skipped => skipped.Line > 1).Select(skipped => skipped.Kind)));
    }

    [Theory]
    [InlineData("No;Name;Pos\n1;Varnum, Ysolde;TW", true)]
    [InlineData("1. Oswin Thackerbury (prop)\n2. Caspian Ironmould (hooker)\n3. T. Thackerbury (prop)", true)]
    [InlineData("Date;Opponent;Venue\n2026-09-05;Kalnes;H", false)]
    [InlineData("What;When;Who\nCamp;21.-23.8.2026;squad", false)]
    [InlineData("1. Harbour Vale - Kalnes 25:20\n2. Brovik - Harbour Vale 20:25\n3. Harbour Vale - Skarholm 30:10", false)]
    [InlineData("Dear parents,\nthe hall is shut on Wednesday.\nBest wishes", false)]
    [InlineData("Name;From;To\nAutumn break;12.10.2026;18.10.2026", false)]
    public void A_squad_list_is_recognised(string text, bool isSquad) => Assert.Equal(isSquad, SquadReader.Is(SourceText.OfText("list", text)));

    [Theory]
    [InlineData("fixtures-01-league-ids.csv")]
    [InlineData("fixtures-02-semicolon-cp1252.csv")]
    [InlineData("fixtures-04-school-rugby-dmy.csv")]
    [InlineData("fixtures-06-pasted-rounds.txt")]
    [InlineData("fixtures-07-cup-windows.csv")]
    public void A_fixture_list_is_none(string name) => Assert.False(SquadReader.Is(SourceText.OfBytes(name, File.ReadAllBytes(Path.Combine(EventCases.Folder, "..", "fixtures", "samples", name)))));

    internal static readonly DateOnly Today = new(2026, 11, 26);

    internal static SquadOptions Options(params (string Question, string Answer)[] answers) => new(Today, answers.Aggregate(Answers.None, (all, one) => all.With(one.Question, one.Answer)));

    private static SquadList Read(string text, params (string Question, string Answer)[] answers) => SquadReader.Read(SourceText.OfText("squad", text), Options(answers));

    private static string Names(SquadList list) => string.Join('|', list.Rows.Select(row => $"{row.Family}, {row.Given}"));

    private static string Lifts(SquadList list) => string.Join('|', list.Rows.Select(row => string.Join("; ", row.Lifts)));

    private static string Asked(SquadList list) => string.Join(',', list.Questions.Select(question => question.Kind).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));

    private static string Row(int number, params string[] cells) => $"<row r=\"{number}\">{string.Concat(cells.Select((cell, i) => cell.Length == 0 ? "" : $"<c r=\"{(char)('A' + i)}{number}\" t=\"inlineStr\"><is><t>{cell}</t></is></c>"))}</row>";
}
