using BakeInsights.Cli;
using Spectre.Console.Cli;

using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, pressed) =>
{
    pressed.Cancel = true;
    stop.Cancel();
};

var app = new CommandApp();
app.Configure(command =>
{
    command.SetApplicationName("bakeinsights");
    command.UseStrictParsing();
    command.SetInterceptor(new MissingValue());
    command.SetExceptionHandler((error, _) => CommandFailure.Report(error));
    command.AddCommand<RunCommand>("run")
        .WithDescription("Run a notebook and write its page.")
        .WithExample("run", "notebooks/review-a-month.ipynb", "--journal", "data-demo/school", "--to", "month.html");
});
return await app.RunAsync(args, stop.Token);
