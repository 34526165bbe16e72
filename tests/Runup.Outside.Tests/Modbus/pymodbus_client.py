"""Asks a Modbus TCP server through pymodbus and prints what came back, one JSON object.

    pymodbus_client.py PORT UNIT

Runs with pymodbus from 3.0 (Debian 12) on; names of arguments changed between its releases.
"""
import inspect
import json
import sys
from unittest import mock

# Debian only recommends what pymodbus's serial client imports; nothing here is serial.
for name in ("serial", "serial_asyncio"):
    try:
        __import__(name)
    except ImportError:
        sys.modules[name] = mock.MagicMock()

from pymodbus.client import ModbusTcpClient  # noqa: E402

try:
    from pymodbus.mei_message import ReadDeviceInformationRequest
except ImportError:
    from pymodbus.pdu.mei_message import ReadDeviceInformationRequest

port, unit = int(sys.argv[1]), int(sys.argv[2])
client = ModbusTcpClient("127.0.0.1", port=port, timeout=10)
names = inspect.signature(client.read_holding_registers).parameters
UNIT = {next(n for n in ("device_id", "slave", "unit") if n in names): unit}


def said(reply):
    if reply.isError():
        return {"exception": reply.exception_code}
    if hasattr(reply, "information"):
        return {
            "objects": {str(k): v.decode("ascii") for k, v in sorted(reply.information.items())},
            "conformity": reply.conformity,
            "more": reply.more_follows,
            "next": reply.next_object_id,
        }
    if getattr(reply, "registers", None):
        return {"registers": reply.registers}
    return {"written": True}


def both(read, count, write, values):
    if "values" in inspect.signature(client.readwrite_registers).parameters:
        return client.readwrite_registers(read_address=read, read_count=count, write_address=write, values=values, **UNIT)
    return client.readwrite_registers(read_address=read, read_count=count, write_address=write, write_registers=values, **UNIT)


def identify(code, first=0):
    if hasattr(client, "read_device_information"):
        return client.read_device_information(read_code=code, object_id=first, **UNIT)
    return client.execute(ReadDeviceInformationRequest(read_code=code, object_id=first, **{"unit": unit, "slave": unit}))


if not client.connect():
    sys.exit("no connection")
out = {
    "write_one": said(client.write_register(5, 42, **UNIT)),
    "write_many": said(client.write_registers(6, [1, 65535], **UNIT)),
    "read_back": said(client.read_holding_registers(5, count=3, **UNIT)),
    "read_input": said(client.read_input_registers(8, count=2, **UNIT)),
    "read_write": said(both(5, 3, 6, [9])),
    "read_most": said(client.read_holding_registers(0, count=125, **UNIT)),
    "write_most": said(client.write_registers(0, list(range(123)), **UNIT)),
    "read_beyond": said(client.read_holding_registers(999, count=2, **UNIT)),
    "write_beyond": said(client.write_register(1000, 1, **UNIT)),
    "write_refused": said(client.write_register(0, 57005, **UNIT)),
    "coils": said(client.read_coils(0, count=1, **UNIT)),
    "basic": said(identify(1)),
    "regular": said(identify(2)),
    "extended": said(identify(3)),
    "one": said(identify(4, 4)),
    "one_missing": said(identify(4, 5)),
}
client.close()
print(json.dumps(out))
