-- Whether the team on the ice was broken off; public at once, without the cause.
alter table segment_result add column interrupted boolean default false not null;
