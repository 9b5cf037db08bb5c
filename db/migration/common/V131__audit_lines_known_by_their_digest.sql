-- How many lines of the record are known by their digests only, since the database was restored from the archive of
-- one of several competitions; 0 everywhere else, so a line whose content was taken out is found.
alter table record_head add column alone bigint default 0 not null;
