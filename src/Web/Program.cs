using Watersown.Web;

return await DeskStart.RunAsync(args, Console.Out, Console.Error, TimeProvider.System);
