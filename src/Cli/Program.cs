using System.Text;
using Watersown.Cli;

// UTF-8 whatever the machine's own habit: a JSON answer is UTF-8, and wrong bytes given must be told, not guessed at.
var strict = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
var plain = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
using var bytes = Console.OpenStandardInput();
using var given = new StreamReader(bytes, strict);
using var error = new StreamWriter(Console.OpenStandardError(), plain) { AutoFlush = true };
var output = new StreamWriter(Console.OpenStandardOutput(), plain); // flushed by the desk; disposing it twice would hide a broken pipe
return await Desk.RunAsync(args, new Edge(output, error, given, TimeProvider.System) { InIsTerminal = !Console.IsInputRedirected, ErrorIsTerminal = !Console.IsErrorRedirected, InBytes = bytes });
