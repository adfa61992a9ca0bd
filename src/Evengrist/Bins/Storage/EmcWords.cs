namespace Evengrist.Bins.Storage;

/// <summary>Forms of equations and marks of constants in words, and back.</summary>
public static class EmcWords
{
    private static readonly (EmcForm Form, string Words)[] Forms =
    [
        (EmcForm.Henderson, "modified Henderson"), (EmcForm.ChungPfost, "modified Chung-Pfost"), (EmcForm.Oswin, "modified Oswin"), (EmcForm.Halsey, "modified Halsey"),
    ];

    /// <summary>Every form there is.</summary>
    public static IReadOnlyList<EmcForm> All { get; } = [.. Forms.Select(f => f.Form)];

    /// <summary>The form in words: <c>modified Henderson</c>.</summary>
    public static string Words(this EmcForm form) => Forms.FirstOrDefault(f => f.Form == form).Words ?? "no equation";

    /// <summary>The mark in words, as it stands on a screen.</summary>
    public static string Words(this ConstantMark mark) => mark switch
    {
        ConstantMark.Read => "read, not checked",
        ConstantMark.Rough => "checked roughly",
        _ => "not verified",
    };
}
