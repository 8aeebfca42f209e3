"""Answers one request wrongly, as a service that is stopped does. Usage: breaks_off.py PORT_FILE ANSWER

The answer is what is sent after the first piece of the request, with escapes as in Python; then the connection ends.
"""

import socket
import sys

server = socket.create_server(("127.0.0.1", 0))
with open(sys.argv[1], "w", encoding="ascii") as port:
    print(server.getsockname()[1], file=port)
connection, _ = server.accept()
connection.recv(65536)
connection.sendall(sys.argv[2].encode().decode("unicode_escape").encode("latin-1"))
connection.shutdown(socket.SHUT_WR)
# What still comes is taken, so that the answer is not lost with a reset.
while connection.recv(65536):
    pass
