namespace Evengrist.Laboratory;

/// <summary>The marks of figures in words.</summary>
public static class FigureMarks
{
    /// <summary>In words: <c>from memory, check before use</c>.</summary>
    public static string Words(this FigureMark mark) => mark switch
    {
        FigureMark.Read => "read in its source",
        FigureMark.Memory => "from memory, check before use",
        FigureMark.Ours => "ours, tuned on no mill",
        FigureMark.Mill => "the mill's own",
        _ => "not said",
    };
}
