-- One book for one farm. Moments are UTC text of one width, so that they sort as they stand; digests are lower-case
-- hexadecimal; what has a document keeps it as the text that came in.

CREATE TABLE marks (
    seq BIGINT NOT NULL PRIMARY KEY,
    id TEXT NOT NULL UNIQUE,
    happened TEXT NOT NULL,
    entered TEXT NOT NULL,
    received TEXT NOT NULL,
    told_by TEXT NOT NULL,
    device TEXT NOT NULL,
    kind TEXT NOT NULL,
    replaces TEXT,
    sender TEXT,
    sha256 TEXT NOT NULL,
    body TEXT NOT NULL
);

CREATE TABLE farms (
    version BIGINT NOT NULL PRIMARY KEY,
    saved TEXT NOT NULL,
    who TEXT NOT NULL,
    why TEXT NOT NULL,
    program TEXT NOT NULL,
    sha256 TEXT NOT NULL,
    document TEXT NOT NULL
);

CREATE TABLE plans (
    number BIGINT NOT NULL PRIMARY KEY,
    made TEXT NOT NULL,
    who TEXT NOT NULL,
    why TEXT NOT NULL,
    farm_version BIGINT NOT NULL REFERENCES farms (version),
    marks_upto BIGINT NOT NULL,
    program TEXT NOT NULL,
    sha256 TEXT NOT NULL,
    document TEXT NOT NULL
);

CREATE TABLE attachments (
    id TEXT NOT NULL PRIMARY KEY,
    received TEXT NOT NULL,
    sender TEXT,
    media_type TEXT NOT NULL,
    size_bytes BIGINT NOT NULL,
    sha256 TEXT NOT NULL,
    content BYTEA NOT NULL
);

CREATE TABLE accounts (
    name TEXT NOT NULL PRIMARY KEY,
    role TEXT NOT NULL,
    created TEXT NOT NULL,
    password_hash TEXT,
    ended TEXT
);

CREATE TABLE passkeys (
    id TEXT NOT NULL PRIMARY KEY,
    account TEXT NOT NULL REFERENCES accounts (name),
    created TEXT NOT NULL,
    used TEXT,
    sign_count BIGINT NOT NULL,
    document TEXT NOT NULL
);

CREATE TABLE sessions (
    id TEXT NOT NULL PRIMARY KEY,
    account TEXT NOT NULL REFERENCES accounts (name),
    device TEXT NOT NULL,
    created TEXT NOT NULL,
    seen TEXT NOT NULL,
    expires TEXT NOT NULL,
    ended TEXT
);

CREATE INDEX sessions_by_account ON sessions (account);

CREATE TABLE links (
    id TEXT NOT NULL PRIMARY KEY,
    sheet TEXT NOT NULL,
    whom TEXT NOT NULL,
    made_by TEXT NOT NULL,
    created TEXT NOT NULL,
    expires TEXT NOT NULL,
    withdrawn TEXT
);

CREATE TABLE sign_ins (
    seq BIGINT NOT NULL PRIMARY KEY,
    at TEXT NOT NULL,
    account TEXT NOT NULL,
    device TEXT NOT NULL,
    what TEXT NOT NULL
);

CREATE TABLE settings (
    name TEXT NOT NULL PRIMARY KEY,
    setting TEXT NOT NULL
);
