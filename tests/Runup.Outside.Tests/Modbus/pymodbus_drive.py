"""Works a simulated drive through pymodbus as a control system would, and prints what it saw, one JSON object.

    pymodbus_drive.py PORT UNIT
"""
import inspect
import json
import sys
import time
from unittest import mock

for name in ("serial", "serial_asyncio"):
    try:
        __import__(name)
    except ImportError:
        sys.modules[name] = mock.MagicMock()

from pymodbus.client import ModbusTcpClient  # noqa: E402

port, unit = int(sys.argv[1]), int(sys.argv[2])
client = ModbusTcpClient("127.0.0.1", port=port, timeout=10)
names = inspect.signature(client.read_holding_registers).parameters
UNIT = {next(n for n in ("device_id", "slave", "unit") if n in names): unit}
if not client.connect():
    sys.exit("no connection")


def read(address, count=1):
    reply = client.read_holding_registers(address=address, count=count, **UNIT)
    return {"exception": reply.exception_code} if reply.isError() else reply.registers


def write(address, *values):
    reply = client.write_registers(address=address, values=list(values), **UNIT)
    return reply.exception_code if reply.isError() else 0


seen = {"voltage": read(105), "acceleration": read(170, 2)}
seen["refused_range"] = write(105, 501)
seen["refused_half"] = write(170, 1)
seen["set_up"] = [write(220, 4), write(221, 3), write(170, 200, 0)]
seen["acceleration_now"] = read(170, 2)
seen["status_before"] = read(1002)[0] & 0x6F
write(1001, 1000)
for word in (6, 7, 15):
    write(1000, word)
seen["status_running"] = read(1002)[0] & 0x6F
until = time.monotonic() + 20
while read(1003)[0] < 1000 and time.monotonic() < until:
    time.sleep(0.05)
seen["frequency"] = read(1003)[0]
seen["refused_running"] = write(105, 380)
write(1000, 7)
while read(1003)[0] > 0 and time.monotonic() < until:
    time.sleep(0.05)
seen["stopped"] = read(1003)[0]
print(json.dumps(seen))
