namespace Evengrist.Milling.Sheet;

/// <summary>What must be known before a person acts on what the mill's flow sheet says.</summary>
public static class MillingCautions
{
    /// <summary>What the program does not do.</summary>
    public const string Advice = "The program records: it moves no roll, valve or feeder. What stands in a sheet is what was entered, not what a machine was seen to do. A named person decides and sets.";

    /// <summary>Rolls that turn.</summary>
    public const string Nip = "Roll nips draw in and crush faster than a hand can be pulled back. A gap is moved from outside with guards shut, by a person trained for it and by the site's procedure. Nobody reaches in, clears a choke or takes stock by hand at a turning roll.";

    /// <summary>Guards and covers.</summary>
    public const string Guard = "Before a guard, a sifter door or a purifier cover is opened: stop, lock out and tag out, wait until it stands still, and show that it cannot start. The site's own rules and local code go before this.";

    /// <summary>Dust and sparks.</summary>
    public const string Dust = "Flour dust explodes. Rolls set so close that they touch make sparks and heat: the maker's least gap and the site's dust rules hold.";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [Advice, Nip, Guard, Dust];
}
