#!/usr/bin/python3
"""Reads CSV from the standard input with Python's own reader, strictly, and prints the records as JSON."""
import csv
import io
import json
import sys

text = sys.stdin.buffer.read().decode("utf-8")
print(json.dumps(list(csv.reader(io.StringIO(text, newline=""), strict=True))))
