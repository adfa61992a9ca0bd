namespace Evengrist.Milling.Solving;

/// <summary>A mill solved for its stock, water and damaged starch, and read off.</summary>
public static class Mill
{
    /// <summary>Solves a mill from empty, as its flow sheet is set.</summary>
    public static MillSolution Solve(MillModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        return new MillRun(model).Read();
    }
}
