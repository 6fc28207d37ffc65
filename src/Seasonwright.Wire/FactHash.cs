using System.Security.Cryptography;
using System.Text.Json;
using Seasonwright.Core.Facts;

namespace Seasonwright.Wire;

/// <summary>
/// A fingerprint of a set of facts: the exclusive or of the SHA-256 of every "key=value" line. It says whether replay gave the
/// same facts again, and following a step costs only the step's places. It is a check against accidents, not against an attacker.
/// </summary>
public readonly record struct FactHash
{
    private const int Length = 32;

    private FactHash(string hex) => Hex = hex;

    /// <summary>64 lower-case hexadecimal digits.</summary>
    public string Hex => field ?? new string('0', 2 * Length);

    public static FactHash Of(FactSet facts) => facts.Keys.Aggregate(default(FactHash), (hash, key) => hash.Toggle(key, facts[key]!));

    public static FactHash Parse(string hex) => new(hex);

    /// <summary>The fingerprint after a step, if the facts held what the step says they did.</summary>
    public FactHash Follow(Step step)
    {
        var hash = this;
        foreach (var change in step.Changes)
        {
            if (change.Before is { } before) hash = hash.Toggle(change.Key, before);
            if (change.After is { } after) hash = hash.Toggle(change.Key, after);
        }
        return hash;
    }

    private FactHash Toggle(Key key, object value)
    {
        var line = $"{key}={JsonSerializer.Serialize(value, FacetBook.Find(key.Facet).ValueType, WireOptions.Compact)}";
        var digest = SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(line));
        var mine = Convert.FromHexString(Hex);
        for (var i = 0; i < Length; i++) mine[i] ^= digest[i];
        return new FactHash(Convert.ToHexStringLower(mine));
    }

    public override string ToString() => Hex;
}
