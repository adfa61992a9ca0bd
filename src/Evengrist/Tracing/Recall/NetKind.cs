namespace Evengrist.Tracing.Recall;

/// <summary>How wide a recall is cast.</summary>
public enum NetKind
{
    /// <summary>Every package that can hold a gram under any outflow.</summary>
    Wide,

    /// <summary>Every package that holds more than the threshold under any hypothesis believed in: the cautious union.</summary>
    Union,

    /// <summary>Every package that holds more than the threshold with at least the chance asked.</summary>
    Narrow,
}
