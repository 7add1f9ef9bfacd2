Console.WriteLine("ready");
