using System.Text.Json;
using Evengrist.Tests.Intake.Grading;

namespace Evengrist.Edge.Tests.Grades;

/// <summary>Holds an answer against its row.</summary>
internal static class Vectors
{
    public static void Check(GradeVector vector, JsonElement answer)
    {
        Assert.Equal(vector.Grade, answer.GetProperty("grade").GetString());
        var deciding = answer.GetProperty("deciding").EnumerateArray().Select(d => d.GetString()!).ToArray();
        Assert.All(vector.Deciding, factor => Assert.Contains(factor, deciding));
        if (vector.Defects is { } defects)
        {
            Assert.Equal(defects, answer.GetProperty("factors").EnumerateArray().Single(f => f.GetProperty("factor").GetString() == "total defects").GetProperty("recorded").GetDecimal());
        }
    }
}
