using Xunit;

namespace BakeInsights.TestKit;

/// <summary>Compares text with a file that a person has read and approved.</summary>
public static class Approved
{
    private const string AcceptVariable = "BAKEINSIGHTS_ACCEPT";

    /// <summary>
    /// Fails unless <paramref name="actual"/> is what the file holds. With the environment variable
    /// BAKEINSIGHTS_ACCEPT set to 1 the file is rewritten instead, and the test still fails, so that a run
    /// that accepts can't be mistaken for a run that checks.
    /// </summary>
    public static void Matches(string relativePath, string actual)
    {
        var path = Repository.Path(relativePath);
        var approved = File.Exists(path) ? File.ReadAllText(path) : "";
        if (approved == actual)
        {
            return;
        }

        if (Environment.GetEnvironmentVariable(AcceptVariable) == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, actual);
            Assert.Fail($"{relativePath} was rewritten. Read the difference, then run again without {AcceptVariable}.");
        }

        Assert.Equal(approved, actual);
    }
}
