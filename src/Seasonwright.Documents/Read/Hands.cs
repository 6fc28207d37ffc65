namespace Seasonwright.Documents.Read;

/// <summary>The two hands that change what a list has brought: the list's and the coach's. What only one has changed holds; where both have changed the same, one is first.</summary>
/// <param name="Said">As the list had it last.</param>
/// <param name="Says">As the list has it now.</param>
/// <param name="Stands">As it stands, with what the coach has done since.</param>
/// <param name="ListFirst">Whose word holds where both have changed the same.</param>
internal sealed record Hands<T>(T Said, T Says, T Stands, bool ListFirst)
{
    /// <summary>A field that stands for itself.</summary>
    public TField Of<TField>(Func<T, TField> field) => !Differ(field, Says, Said) ? field(Stands) : ListFirst || !Differ(field, Stands, Said) ? field(Says) : field(Stands);

    /// <summary>A field that belongs to another: once both have changed that one, and not alike, both fields are one side's.</summary>
    public TField Of<TField, TWhole>(Func<T, TField> field, Func<T, TWhole> whole) =>
        Differ(whole, Says, Said) && Differ(whole, Stands, Said) && Differ(whole, Says, Stands) ? field(ListFirst ? Says : Stands) : Of(field);

    private static bool Differ<TField>(Func<T, TField> field, T one, T other) => !EqualityComparer<TField>.Default.Equals(field(one), field(other));
}
