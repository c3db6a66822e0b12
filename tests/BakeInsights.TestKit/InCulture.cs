using System.Globalization;
using System.Runtime.ExceptionServices;

namespace BakeInsights.TestKit;

/// <summary>Runs work as on a machine set up for another language.</summary>
public static class InCulture
{
    /// <summary>
    /// The result of the work, done on a thread of its own in the culture of this name ("de-DE"); the caller's culture
    /// stays as it is. What the work throws, the caller gets.
    /// </summary>
    public static T Run<T>(string culture, Func<T> work)
    {
        var result = default(T);
        ExceptionDispatchInfo? failure = null;
        var thread = new Thread(() =>
        {
            try
            {
                Thread.CurrentThread.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                Thread.CurrentThread.CurrentUICulture = CultureInfo.GetCultureInfo(culture);
                result = work();
            }
            catch (Exception thrown)
            {
                failure = ExceptionDispatchInfo.Capture(thrown);
            }
        });
        thread.Start();
        thread.Join();
        failure?.Throw();
        return result!;
    }
}
