namespace Evengrist.Ledger;

/// <summary>What keeps grain from going into or out of a place at a moment; each is the happening that began it, null where there is none.</summary>
/// <remarks>Model: docs/model/bin-states.md. A state said in words by an earlier release (<see cref="HappeningKind.State"/>) is read as the kind it names.</remarks>
public sealed record Bars
{
    private static readonly (HappeningKind Kind, string Word)[] Said = [(HappeningKind.PersonInside, "person inside"), (HappeningKind.UnderGas, "under gas"), (HappeningKind.Shut, "shut")];

    private Bars()
    {
    }

    /// <summary>Nothing is in the way.</summary>
    public static Bars None { get; } = new();

    /// <summary>A person is in the place: nothing may go in or out.</summary>
    public Happening? PersonInside { get; private init; }

    /// <summary>Fumigant is in the place: nothing may go in or out.</summary>
    public Happening? UnderGas { get; private init; }

    /// <summary>On hold: nothing may leave, and nothing may go into a bin.</summary>
    public Happening? Held { get; private init; }

    /// <summary>Shut: nothing may go in.</summary>
    public Happening? Shut { get; private init; }

    /// <summary>Whether a person, gas, a hold or a shut gate is in the way of anything at all.</summary>
    public bool IsAny => PersonInside is not null || UnderGas is not null || Held is not null || Shut is not null;

    /// <summary>The gravest of them; null where there is none.</summary>
    public Happening? Gravest => PersonInside ?? UnderGas ?? Held ?? Shut;

    /// <summary>What stands once a further thing has happened to the place.</summary>
    public Bars After(Happening happening)
    {
        ArgumentNullException.ThrowIfNull(happening);
        return happening.Kind switch
        {
            HappeningKind.PersonInside => this with { PersonInside = happening },
            HappeningKind.PersonOut => this with { PersonInside = null },
            HappeningKind.UnderGas => this with { UnderGas = happening },
            HappeningKind.GasCleared => this with { UnderGas = null },
            HappeningKind.Held => this with { Held = happening },
            HappeningKind.Released => this with { Held = null },
            HappeningKind.Shut => this with { Shut = happening },
            HappeningKind.Reopened => this with { Shut = null },
            HappeningKind.State => Unsaid().AfterSaid(happening),
            HappeningKind.ProvenEmpty => Unsaid(),
            _ => this,
        };
    }

    /// <summary>What keeps grain from going into a place of the kind; null where nothing does.</summary>
    public Happening? AgainstIn(PlaceKind kind) => PersonInside ?? UnderGas ?? (kind.IsBin() ? Held : null) ?? Shut;

    /// <summary>What keeps grain from leaving; null where nothing does.</summary>
    public Happening? AgainstOut => PersonInside ?? UnderGas ?? Held;

    // The newest state said in words stood in for the one before it, and proven empty ended it.
    private Bars Unsaid() => this with { PersonInside = Kept(PersonInside), UnderGas = Kept(UnderGas), Shut = Kept(Shut) };

    private static Happening? Kept(Happening? bar) => bar is { Kind: HappeningKind.State } ? null : bar;

    private Bars AfterSaid(Happening state) => Said.FirstOrDefault(s => state.Text.StartsWith(s.Word, StringComparison.OrdinalIgnoreCase)).Kind switch
    {
        HappeningKind.PersonInside => this with { PersonInside = PersonInside ?? state },
        HappeningKind.UnderGas => this with { UnderGas = UnderGas ?? state },
        HappeningKind.Shut => this with { Shut = Shut ?? state },
        _ => this,
    };
}
