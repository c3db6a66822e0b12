namespace BakeInsights.Reports.Tests;

/// <summary>Pages as text.</summary>
internal static class WrittenPage
{
    public static string Of(PageNotebook notebook)
    {
        using var writer = new StringWriter();
        NotebookPage.Write(notebook, writer);
        return writer.ToString();
    }
}
