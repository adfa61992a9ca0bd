using System.Text.Json;
using Evengrist.Plant.Imports;

namespace Evengrist.Plant.Epcis;

/// <summary>An object: which members it may have and which it must.</summary>
/// <param name="Members">Known members with their shapes.</param>
internal sealed record ObjectShape(IReadOnlyDictionary<string, Shape> Members)
{
    /// <summary>Members that must be there.</summary>
    public IReadOnlyList<string> Required { get; init; } = [];

    /// <summary>Whether further members may stand in it under a name with a namespace: a URI, or a prefix and a colon.</summary>
    public bool MayExtend { get; init; }

    /// <summary>Whether members of any other name may stand in it.</summary>
    public bool MayHoldAnything { get; init; }

    public Shape ToShape() => Look;

    public void Look(Part part, Faults faults)
    {
        if (part.Json.ValueKind != JsonValueKind.Object)
        {
            faults.Add(part.Wrong("an object"));
            return;
        }

        foreach (var name in Required)
        {
            if (!part.Has(name))
            {
                faults.Add(Fault.AtPath(part.Path.Member(name).ToString(), "", $"{name}; it is missing"));
            }
        }

        foreach (var member in part.Json.EnumerateObject())
        {
            if (Members.TryGetValue(member.Name, out var shape))
            {
                shape(new Part(member.Value, part.Path.Member(member.Name)), faults);
            }
            else if (!MayHoldAnything && !(MayExtend && UriForm.IsUri(member.Name)))
            {
                faults.Add(Fault.AtPath(part.Path.Member(member.Name).ToString(), member.Name, Expected(member.Name)));
            }
        }
    }

    private string Expected(string name) =>
        (Nearest.To(name, [.. Members.Keys]) is { } near ? $"a known member; the nearest is {near}" : $"one of {string.Join(", ", Members.Keys)}")
        + (MayExtend ? "; a member of your own needs a namespace before it, such as mill:protein" : "");
}
