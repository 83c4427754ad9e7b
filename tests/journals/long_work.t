Long work shows how far it is on a terminal, and only there.

  $ mkdir many && python3 "$TESTDIR/../web/many_hives.py" 320 6 3 many/many.hive && test "$(wc -c <many/many.hive)" -gt 1000000
  $ waxtab supers --hive h001 --on 2026-07-05 many >plain.txt 2>errors.txt; wc -c <errors.txt
  0
  $ cat >watched.py <<'EOF'
  > import os, pty
  > os.environ["TERM"] = "xterm"
  > seen = bytearray()
  > pid, fd = pty.fork()
  > if pid == 0:
  >     os.execvp("sh", ["sh", "-c", "waxtab supers --hive h001 --on 2026-07-05 many >watched.txt"])
  > try:
  >     while data := os.read(fd, 1024): seen.extend(data)
  > except OSError:
  >     pass
  > os.waitpid(pid, 0)
  > print(bytes(seen))
  > EOF
  $ python3 watched.py
  b'\r\x1b[Kwaxtab: reading and estimating\r\x1b[K'
  $ cmp plain.txt watched.txt
