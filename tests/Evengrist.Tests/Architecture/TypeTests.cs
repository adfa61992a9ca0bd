using System.Globalization;
using System.Reflection;
using System.Runtime.CompilerServices;
using Evengrist.Quantities;

namespace Evengrist.Tests.Architecture;

public sealed class TypeTests
{
    private static readonly string[] Operators = ["op_LessThan", "op_GreaterThan", "op_LessThanOrEqual", "op_GreaterThanOrEqual", "op_Equality", "op_Inequality"];

    /// <summary>Public structs that are rows of data and no quantities: each with the reason why it has no order and no text of its own.</summary>
    private static readonly Dictionary<string, string> PlainRows = new()
    {
        ["Evengrist.Ledger.Attribution"] = "the envelope of a fact; facts are ordered by their number",
    };

    private static readonly IReadOnlyList<Type> Public = typeof(Mass).Assembly.GetExportedTypes();

    private static readonly IReadOnlyList<Type> Structs = Public.Where(t => t is { IsValueType: true, IsEnum: false } && !PlainRows.ContainsKey(t.FullName!)).ToList();

    [Fact]
    public void Struct_Public_HasOrderAndOperators() =>
        Assert.Empty(Structs.SelectMany(t => Missing(t).Select(m => $"{t.Name} lacks {m}")));

    [Fact]
    public void Struct_Public_WritesItselfInItsOwnWords() =>
        Assert.Empty(Structs.Where(t => t.GetMethod("ToString", Type.EmptyTypes) is not { } own || own.DeclaringType != t || own.IsDefined(typeof(CompilerGeneratedAttribute))).Select(t => t.Name));

    [Fact]
    public void Struct_Public_WritesTheSameInEveryCulture()
    {
        foreach (var type in Structs)
        {
            Assert.True(StructSamples.All.TryGetValue(type, out var sample), $"{type.Name} needs a row in StructSamples: a value and how it writes itself, unit and all.");
            Assert.Equal(sample.Text, InAnotherCulture(sample.Value));
            Assert.NotEmpty(InAnotherCulture(Activator.CreateInstance(type)!));
        }
    }

    [Fact]
    public void PlainRows_Listed_StillExist() =>
        Assert.All(PlainRows.Keys, name => Assert.Contains(Public, t => t.FullName == name));

    [Fact]
    public void Class_Public_IsSealedStaticOrAbstract() =>
        Assert.Empty(Public.Where(t => t is { IsClass: true, IsSealed: false, IsAbstract: false }).Select(t => t.FullName));

    private static IEnumerable<string> Missing(Type type)
    {
        if (!typeof(IComparable<>).MakeGenericType(type).IsAssignableFrom(type))
        {
            yield return $"IComparable<{type.Name}>";
        }

        foreach (var name in Operators.Where(o => type.GetMethod(o, BindingFlags.Public | BindingFlags.Static, [type, type]) is null))
        {
            yield return name;
        }
    }

    // Digits and signs as unlike the invariant ones as can be, on any machine.
    private static string InAnotherCulture(object value)
    {
        var before = CultureInfo.CurrentCulture;
        var other = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        (other.NumberFormat.NumberDecimalSeparator, other.NumberFormat.NumberGroupSeparator, other.NumberFormat.NegativeSign) = (",", ".", "~");
        try
        {
            CultureInfo.CurrentCulture = other;
            return value.ToString()!;
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
